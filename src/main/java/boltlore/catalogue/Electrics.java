package boltlore.catalogue;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a family's high-voltage system is made of, each piece with the orders that it belongs to.
 *
 * @param buses null where the family does not say how its buses are parted
 * @param capacitors what fills through the precharge resistor; all that belong to an order add up
 * @param branches cables with what they carry and the fuse ahead of them
 */
public record Electrics(
        @Nullable Buses buses,
        List<Pack> packs,
        List<OnBoardCharger> chargers,
        List<InletWiring> inlets,
        List<Capacitor> capacitors,
        List<PrechargeResistor> resistors,
        List<Fuse> fuses,
        List<PowerCable> cables,
        List<Branch> branches,
        List<Outlet> outlets) {

    /** Of a family that says nothing about its high-voltage system. */
    public static final Electrics NONE = new Electrics(
            null, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
}
