package boltlore.trades.charging;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.catalogue.Branch;
import boltlore.catalogue.Fuse;
import boltlore.catalogue.PrechargeResistor;
import boltlore.measure.PartNumber;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Where electrics.json and the kit do not speak of the same parts. */
record Agreement(Bill bill) {

    /** The cable is not at its position, or the fuse's part not in the kit. */
    Stream<Comparison> of(Branch branch, @Nullable Fuse fuse) {
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
        return fuse == null ? atPosition : Stream.concat(atPosition, inKit(branch.says(), fuse.part()).stream());
    }

    Stream<Comparison> of(PrechargeResistor resistor) {
        return inKit("Precharge", resistor.part()).stream();
    }

    private Optional<Comparison> inKit(String about, PartNumber part) {
        return bill.quantities().containsKey(part)
                ? Optional.empty()
                : Optional.of(Comparison.broken(about, ChargingFinding.PART_NOT_IN_KIT, "about", about, "part", part));
    }

    private Stream<PartNumber> at(Branch branch) {
        return bill.items().stream()
                .filter(item -> item.position().name().equals(branch.position()))
                .flatMap(Item::all)
                .map(item -> item.part().number());
    }
}
