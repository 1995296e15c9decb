package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a family's power wiring is made of, each piece with the orders that it belongs to.
 *
 * @param lowVoltage null where the family does not describe its 12 V network
 * @param limits null where the workshop sets none
 * @param buses null where the family does not say how its buses are parted
 * @param capacitors what fills through the precharge resistor; all that belong to an order add up
 * @param branches cables with what they carry and the fuse ahead of them
 * @param circuits of the 12 V network, each behind a blade fuse
 */
public record Electrics(
        @Nullable Buses buses,
        @Nullable LowVoltage lowVoltage,
        @Nullable ElectricLimits limits,
        List<Pack> packs,
        List<OnBoardCharger> chargers,
        List<InletWiring> inlets,
        List<Capacitor> capacitors,
        List<PrechargeResistor> resistors,
        List<Fuse> fuses,
        List<PowerCable> cables,
        List<Branch> branches,
        List<PublicLead> leads,
        List<Outlet> outlets,
        List<FusedCircuit> circuits) {

    /** Of a family that says nothing about its high-voltage system. */
    public static final Electrics NONE = new Electrics(
            null, null, null, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
            List.of(), List.of(), List.of());

    /** A fuse by its name. */
    public Optional<Fuse> fuse(@Nullable String name) {
        return fuses.stream().filter(fuse -> fuse.name().equals(name)).findFirst();
    }

    /** A cable by its part number. */
    public Optional<PowerCable> cable(PartNumber part) {
        return cables.stream().filter(cable -> cable.part().equals(part)).findFirst();
    }
}
