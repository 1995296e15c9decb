package boltlore.trades.charging;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.catalogue.Branch;
import boltlore.catalogue.InletWiring;
import boltlore.catalogue.PrechargeResistor;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Where electrics.json and the kit do not speak of the same parts.
 *
 * @param parts all of the kit, added up once for all fuses
 */
record Agreement(Bill bill, Set<PartNumber> parts) {

    Agreement(Bill bill) {
        this(bill, bill.quantities().keySet());
    }

    /** The cable is not at its position, or the fuse's part not in the kit. */
    Stream<Comparison> of(BranchCheck check) {
        Branch branch = check.branch();
        Stream<Comparison> atPosition = at(branch).noneMatch(part -> part.equals(branch.cable()))
                ? Stream.of(Comparison.broken(
                        branch.says(),
                        ChargingFinding.CABLE_NOT_AT_POSITION,
                        "branch",
                        branch.says(),
                        "part",
                        branch.cable(),
                        "position",
                        branch.position()))
                : Stream.empty();
        Stream<Comparison> fuses = Stream.of(check.fuse(), check.farFuse())
                .filter(Objects::nonNull)
                .flatMap(fuse -> inKit(branch.says(), fuse.part()).stream());
        return Stream.of(atPosition, fuses, ports(check)).flatMap(found -> found);
    }

    private Stream<Comparison> ports(BranchCheck check) {
        return BranchPorts.of(bill.resolved().choices().family(), check.branch()).stream()
                .flatMap(port -> at(port.position())
                        .flatMap(item -> port.of(check.branch(), check.load(), item.part()).stream()));
    }

    Stream<Comparison> of(PrechargeResistor resistor) {
        return inKit("Precharge", resistor.part()).stream();
    }

    /** Where direct and alternating current share contacts, contactors isolate the charger from them. */
    Stream<Comparison> of(@Nullable InletWiring inlet) {
        if (inlet == null || !inlet.sharedPins()) {
            return Stream.empty();
        }
        PositionName isolatedBy = inlet.isolatedBy();
        return Stream.of(Comparison.of(
                "Inlet",
                isolatedBy != null && at(isolatedBy).findAny().isPresent(),
                ChargingFinding.SHARED_PINS,
                "position",
                isolatedBy == null ? "–" : isolatedBy));
    }

    /** Length in mm of the cable at the branch's position, the longest where there are several; null where none says. */
    @Nullable
    Integer lengthMm(Branch branch) {
        return at(branch.position())
                .map(item -> item.part().lengthMm())
                .filter(Objects::nonNull)
                .max(Comparator.naturalOrder())
                .orElse(null);
    }

    private Stream<Item> at(PositionName position) {
        return bill.items().stream().filter(item -> item.position().name().equals(position));
    }

    private Optional<Comparison> inKit(String about, PartNumber part) {
        return parts.contains(part)
                ? Optional.empty()
                : Optional.of(Comparison.broken(about, ChargingFinding.PART_NOT_IN_KIT, "about", about, "part", part));
    }

    private Stream<PartNumber> at(Branch branch) {
        return at(branch.position()).flatMap(Item::all).map(item -> item.part().number());
    }
}
