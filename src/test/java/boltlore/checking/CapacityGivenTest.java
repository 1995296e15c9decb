package boltlore.checking;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Capacity;
import boltlore.catalogue.Capacity.KitWorked;
import boltlore.catalogue.Capacity.OpenHours;
import boltlore.catalogue.Capacity.WorkCentre;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.HouseRules;
import boltlore.demo.Demo;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A workshop that says what its work centres can do")
class CapacityGivenTest {

    private static List<String> remarks(@Nullable Capacity capacity) {
        return said(CapacityGiven.remarks(demo(capacity)));
    }

    private static List<String> said(Stream<Remark> remarks) {
        return remarks.map(remark -> remark.about() + ": " + remark.found()).toList();
    }

    private static Catalogue demo(@Nullable Capacity capacity) {
        Catalogue demo = Demo.catalogue();
        return new Catalogue(
                demo.workshop(),
                demo.finishes(),
                demo.materials(),
                demo.parts(),
                demo.families(),
                demo.revision(),
                demo.prices(),
                demo.shipping(),
                capacity,
                demo.stores(),
                HouseRules.NONE);
    }

    private static Capacity changed(String centre, UnaryOperator<WorkCentre> change) {
        Capacity demo = Objects.requireNonNull(Demo.catalogue().capacity());
        return new Capacity(
                demo.centres().stream()
                        .map(each -> each.name().equals(centre) ? change.apply(each) : each)
                        .toList(),
                demo.daysOff());
    }

    private static WorkCentre with(WorkCentre centre, Set<String> operations, Set<KitWorked> kitWork) {
        return new WorkCentre(centre.name(), centre.says(), operations, kitWork, centre.open());
    }

    private static WorkCentre open(WorkCentre centre, String hoursPerDay) {
        OpenHours open = new OpenHours(1, 1, new BigDecimal(hoursPerDay), BigDecimal.valueOf(100));
        return new WorkCentre(centre.name(), centre.says(), centre.operations(), centre.kitWork(), open);
    }

    @Test
    @DisplayName("has a centre for all its work, and what another firm does needs none")
    void demo() {
        assertThat(remarks(Demo.catalogue().capacity())).isEmpty();
    }

    @Test
    @DisplayName("is asked for the centre of an operation that has none")
    void operation() {
        Capacity capacity = changed("weld", centre -> {
            Set<String> fewer = new TreeSet<>(centre.operations());
            fewer.remove("dress and check");
            return with(centre, fewer, centre.kitWork());
        });

        assertThat(remarks(capacity)).containsExactly("operation dress and check: at no work centre of capacity.json");
    }

    @Test
    @DisplayName("is asked who tests its kits")
    void kit_work() {
        Capacity capacity =
                changed("test-bench", centre -> with(centre, Set.of("pack"), EnumSet.noneOf(KitWorked.class)));

        assertThat(remarks(capacity)).containsExactly("work on kits: no work centre of capacity.json with 'tests'");
    }

    @Test
    @DisplayName("has one length of the oven's day, in hours here and in minutes there")
    void oven() {
        assertThat(remarks(changed("oven", centre -> open(centre, "8.00")))).isEmpty();
        assertThat(remarks(changed("oven", centre -> open(centre, "7.5"))))
                .containsExactly("work centre oven: another day than 'dayMinutes' in coating.json, 480 minutes");
    }

    @Test
    @DisplayName("names its centres in each of its languages")
    void translated() {
        Capacity english = changed(
                "saw",
                centre -> new WorkCentre(
                        centre.name(), Wording.english("Saw"), centre.operations(), centre.kitWork(), centre.open()));

        assertThat(said(Translations.remarks(demo(english))))
                .containsExactly("work centre saw: 'Saw' is not in de, fr");
        assertThat(said(Translations.remarks(Demo.catalogue()))).isEmpty();
    }

    @Test
    @DisplayName("and one that does not say so is asked nothing")
    void none() {
        assertThat(remarks(null)).isEmpty();
    }
}
