package boltlore.catalogue;

import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** How much each work centre can do, and on which days nobody works. */
public record Capacity(List<WorkCentre> centres, List<DaysOff> daysOff) {

    /** Work that is no operation of a single part: on the finished kit, as the price book costs it, and the own oven's. */
    public enum KitWorked {
        ASSEMBLES,
        TESTS,
        PACKS,
        COATS
    }

    /**
     * Machines, benches or people that take the same work, one job each at a time.
     *
     * @param operations of parts that are worked here
     * @param kitWork of whole kits that is done here
     * @param open null where nobody has said how much it can do: its work is not judged then
     */
    public record WorkCentre(
            String name,
            Wording says,
            Set<String> operations,
            Set<KitWorked> kitWork,
            @Nullable OpenHours open) {}

    /**
     * How long a work centre is open on a working day.
     *
     * @param stations at work side by side, at least 1
     * @param together people who work together on the one job of a station, at least 1
     * @param hoursPerDay by the clock, the same for all stations
     * @param efficiencyPercent standard hours that an open hour gives, in per cent: what breakdowns, looking for things and
     *     waiting take is left out
     */
    public record OpenHours(int stations, int together, BigDecimal hoursPerDay, BigDecimal efficiencyPercent) {}

    /** Days on which the workshop is closed beside Saturdays and Sundays, both ends included. */
    public record DaysOff(LocalDate from, LocalDate to, Wording says) {
        boolean holds(LocalDate day) {
            return !day.isBefore(from) && !day.isAfter(to);
        }
    }

    public Capacity {
        centres = List.copyOf(centres);
        daysOff = List.copyOf(daysOff);
    }

    /** Whether the workshop works: from Monday to Friday, but not on days off. */
    public boolean worksOn(LocalDate day) {
        return day.getDayOfWeek() != DayOfWeek.SATURDAY
                && day.getDayOfWeek() != DayOfWeek.SUNDAY
                && daysOff.stream().noneMatch(off -> off.holds(day));
    }

    /** Who works that operation of a part. */
    public Optional<WorkCentre> of(String operation) {
        return centres.stream()
                .filter(centre -> centre.operations().contains(operation))
                .findFirst();
    }

    public Optional<WorkCentre> of(KitWorked work) {
        return centres.stream()
                .filter(centre -> centre.kitWork().contains(work))
                .findFirst();
    }
}
