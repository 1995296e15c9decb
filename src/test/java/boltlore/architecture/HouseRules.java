package boltlore.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** The rules of the house as checks on the classes below one root package. Each fails when it matches no class. */
final class HouseRules {

    private static final String[] STANDARD = {
        "java..", "javax..", "org.jspecify.annotations..", "org.w3c..", "org.xml.."
    };
    private static final Set<String> CLOCKS = Set.of("now", "currentTimeMillis");

    private final String root;

    HouseRules(String root) {
        this.root = root;
    }

    ArchRule livesInOneRoom(String library, String home) {
        return noClasses()
                .that()
                .resideOutsideOfPackage(root + "." + home)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library + "..")
                .as("only " + home + " knows " + library);
    }

    ArchRule usesNoOtherLibrary() {
        String[] known = Stream.of(
                        Stream.of(STANDARD),
                        House.LIBRARIES.keySet().stream().map(name -> name + ".."),
                        Stream.of(root + ".."))
                .flatMap(names -> names)
                .toArray(String[]::new);
        return classes()
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(known).or(primitive()));
    }

    /**
     * No package uses itself by way of others, where all packages that begin with the same words count as one.
     *
     * @param depth so many words of a package's name
     */
    ArchRule hasNoCircle(int depth) {
        return slices().assignedFrom(byWords(depth)).should().beFreeOfCycles();
    }

    private SliceAssignment byWords(int depth) {
        return new SliceAssignment() {
            @Override
            public SliceIdentifier getIdentifierOf(JavaClass type) {
                String name = type.getPackageName();
                return name.startsWith(root + ".")
                        ? SliceIdentifier.of(Plan.cut(name.substring(root.length() + 1), depth))
                        : SliceIdentifier.ignore();
            }

            @Override
            public String getDescription() {
                return "packages below " + root + " by " + depth + " words";
            }
        };
    }

    ArchRule saysWhatItIs() {
        return noClasses()
                .should()
                .resideInAnyPackage("..util..", "..utils..", "..helper..", "..helpers..", "..manager..")
                .orShould()
                .haveSimpleNameEndingWith("Util")
                .orShould()
                .haveSimpleNameEndingWith("Utils")
                .orShould()
                .haveSimpleNameEndingWith("Helper")
                .orShould()
                .haveSimpleNameEndingWith("Manager");
    }

    ArchRule isToldTheDate() {
        String[] withClock = House.WITH_A_CLOCK.stream().map(this::roomAndBelow).toArray(String[]::new);
        return noClasses()
                .that()
                .resideOutsideOfPackages(withClock)
                .should()
                .callMethodWhere(readsAClock())
                .as("only " + House.WITH_A_CLOCK + " read a clock");
    }

    /** A locale of the machine must change nothing that is written: neither digits nor letters. */
    ArchRule writesInNoLocaleOfTheMachine() {
        return noClasses().should().callMethodWhere(asksTheMachinesLocale()).as("no text in the machine's locale");
    }

    private static DescribedPredicate<JavaCall<?>> asksTheMachinesLocale() {
        return DescribedPredicate.describe("the machine's locale is asked", call -> {
            boolean given = call.getTarget().getRawParameterTypes().stream()
                    .anyMatch(type -> type.isEquivalentTo(Locale.class));
            return !given
                    && Set.of("format", "formatted", "printf", "toLowerCase", "toUpperCase")
                            .contains(call.getName())
                    && Set.of("java.lang.String", "java.io.PrintWriter", "java.io.PrintStream", "java.util.Formatter")
                            .contains(call.getTargetOwner().getName());
        });
    }

    private static DescribedPredicate<JavaCall<?>> readsAClock() {
        return DescribedPredicate.describe(
                "a clock is read",
                call -> CLOCKS.contains(call.getName())
                        && (call.getTargetOwner().getPackageName().equals("java.time")
                                || call.getTargetOwner().isEquivalentTo(System.class)));
    }

    private static DescribedPredicate<JavaClass> primitive() {
        return DescribedPredicate.describe(
                "primitive", type -> type.getBaseComponentType().isPrimitive());
    }

    private String roomAndBelow(String room) {
        return root + "." + room + "..";
    }
}
