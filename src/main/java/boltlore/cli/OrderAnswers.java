package boltlore.cli;

import boltlore.asking.FigureWords;
import boltlore.catalogue.Condition;
import boltlore.choices.Choices;
import boltlore.choosing.Chooser;
import boltlore.choosing.ConflictWords;
import boltlore.choosing.FamilyQuestions;
import boltlore.choosing.FamilyQuestions.Bringing;
import boltlore.choosing.FamilyQuestions.Together;
import boltlore.choosing.SureParts;
import boltlore.choosing.json.FamilyJson;
import boltlore.explanation.ConditionWords;
import boltlore.json.JsonOut;
import boltlore.logic.Count;
import boltlore.measure.PartNumber;
import java.util.List;
import java.util.stream.Collectors;

/** The answers of 'orders', as text or JSON, each with its exit code. */
final class OrderAnswers {

    private final Screen screen;
    private final CatalogueSession session;
    private final FamilyQuestions questions;
    private final Choices choices;
    private final ConflictWords words;
    private final boolean json;

    OrderAnswers(Screen screen, CatalogueSession session, ChoosingSession choosing, boolean json) {
        this.screen = screen;
        this.session = session;
        this.questions = choosing.questions();
        this.choices = choosing.choices();
        this.words = new ConflictWords(choices.family());
        this.json = json;
    }

    int count() {
        Count count = questions.count(choices);
        if (json) {
            print(FamilyJson.count(count));
        } else {
            boolean none =
                    count instanceof Count.Exactly exactly && exactly.orders().signum() == 0;
            String keep = choices.values().isEmpty() ? "in all" : "keep these choices";
            String keeps = choices.values().isEmpty() ? "in all" : "keeps these choices";
            String sentence = FigureWords.orders(count, keep, keeps) + (none ? "; 'boltlore choose' says why." : ".");
            screen.wrapped(0, Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1));
        }
        return count instanceof Count.Exactly ? Exit.OK : Exit.UNDECIDED;
    }

    int with(List<PartNumber> parts) {
        for (PartNumber part : parts) {
            Bringing bringing = questions.bringing(part, choices);
            if (json) {
                print(FamilyJson.bringing(part, bringing, new ConditionWords(choices.family())));
            } else {
                print(part, bringing);
            }
        }
        return Exit.OK;
    }

    private void print(PartNumber part, Bringing bringing) {
        screen.heading(named(part));
        screen.wrapped(
                2, bringing.when().map(this::when).orElse("No short description of the orders that contain it."));
        screen.wrapped(2, FigureWords.share(bringing.bringing(), bringing.all()));
    }

    private String when(Condition condition) {
        if (condition.equals(boltlore.logic.Any.NEVER)) {
            return "In no order.";
        }
        String words = new ConditionWords(choices.family()).of(condition);
        return condition.isAlways() ? "In every order." : "In orders with: " + words + ".";
    }

    int together(List<PartNumber> parts) {
        Together together = questions.together(parts, choices);
        String names = parts.stream().map(this::named).collect(Collectors.joining(" and "));
        if (json) {
            print(FamilyJson.together(together));
        } else if (together instanceof Together.Possible possible) {
            screen.wrapped(0, names + " ship together, for example with:");
            Chooser.list(possible.order()).forEach(choice -> screen.wrapped(2, choice + "  " + words.says(choice)));
        } else if (together instanceof Together.Never never) {
            screen.wrapped(0, words.never(names + " never ship together", never.conflict()));
        }
        return Exit.OK;
    }

    int sure() {
        SureParts sure = questions.sure(choices);
        if (json) {
            print(FamilyJson.sure(sure));
        } else {
            if (sure.least().isEmpty()) {
                count();
                return Exit.OK;
            }
            screen.heading("Parts that each order contains, with their least quantity; "
                    + FigureWords.orders(sure.completions(), "keep these choices", "keeps these choices"));
            SureText.rows(screen, session, sure);
        }
        return Exit.OK;
    }

    private String named(PartNumber part) {
        return part + " " + session.catalogue().part(part).name().english();
    }

    private void print(JsonOut out) {
        screen.line(out.written().stripTrailing());
    }
}
