package boltlore.resolution.rules;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Family;
import boltlore.catalogue.Finish;
import boltlore.choices.Choices;
import boltlore.choices.FinishChosen;
import boltlore.resolution.rules.Facts.RoleFinish;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Which finish each finish role takes in one order; a part's fixed finish counts as a role of its own. */
final class FinishRoles {

    private static final String FIXED = "finish ";

    private FinishRoles() {}

    static String roleOf(CoatingSpec coat) {
        return coat.role() != null ? coat.role() : FIXED + coat.finish();
    }

    static List<Object> derive(Catalogue catalogue, Family family, Choices choices) {
        List<Object> facts = new ArrayList<>();
        family.finishes().forEach((role, rule) -> {
            String finish = FinishChosen.by(rule, choices);
            if (finish != null) {
                facts.add(new RoleFinish(
                        role, finish, ownOven(catalogue.finishes().get(finish))));
            }
        });
        catalogue.finishes().forEach((name, finish) -> facts.add(new RoleFinish(FIXED + name, name, ownOven(finish))));
        return facts;
    }

    private static boolean ownOven(@Nullable Finish finish) {
        return finish != null && finish.where() instanceof CoatedWhere.OwnOven;
    }
}
