package boltlore.resolution.rules;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.definition.rule.Rule;
import org.kie.api.runtime.KieSession;

/** The rules as compiled by the build, loaded once in a process. */
final class RuleBase {

    private static final String INDEX = "/META-INF/kie/boltlore/boltlore/drools-model";

    private RuleBase() {}

    static KieSession newSession() {
        return Loaded.BASE.newKieSession();
    }

    static Stream<Rule> rules() {
        return Loaded.BASE.getKiePackages().stream().flatMap(each -> each.getRules().stream());
    }

    private static final class Loaded {
        private static final KieBase BASE = load();
    }

    private static KieBase load() {
        try (InputStream index = RuleBase.class.getResourceAsStream(INDEX)) {
            if (index == null) {
                throw new IllegalStateException("The build has left no compiled rules at " + INDEX);
            }
            String name = new String(index.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.startsWith("boltlore."))
                    .findFirst()
                    .orElseThrow();
            Model model = Class.forName(name)
                    .asSubclass(Model.class)
                    .getDeclaredConstructor()
                    .newInstance();
            return KieBaseBuilder.createKieBaseFromModel(model);
        } catch (IOException | ReflectiveOperationException e) {
            throw new IllegalStateException("The compiled rules cannot be loaded", e);
        }
    }
}
