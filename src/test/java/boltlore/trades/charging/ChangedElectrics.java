package boltlore.trades.charging;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Capacitor;
import boltlore.catalogue.ElectricLimits;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.InletWiring;
import boltlore.catalogue.Pack;
import boltlore.catalogue.PrechargeResistor;
import boltlore.catalogue.PublicLead;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A family's electrics with one thing other than it is. */
record ChangedElectrics(Electrics all) {

    Electrics packs(List<Pack> packs) {
        return with(all.limits(), packs, all.inlets(), all.capacitors(), all.resistors(), all.branches(), all.leads());
    }

    Electrics limits(@Nullable ElectricLimits limits) {
        return with(limits, all.packs(), all.inlets(), all.capacitors(), all.resistors(), all.branches(), all.leads());
    }

    Electrics inlets(List<InletWiring> inlets) {
        return with(all.limits(), all.packs(), inlets, all.capacitors(), all.resistors(), all.branches(), all.leads());
    }

    Electrics capacitors(List<Capacitor> capacitors) {
        return with(all.limits(), all.packs(), all.inlets(), capacitors, all.resistors(), all.branches(), all.leads());
    }

    Electrics resistors(List<PrechargeResistor> resistors) {
        return with(all.limits(), all.packs(), all.inlets(), all.capacitors(), resistors, all.branches(), all.leads());
    }

    Electrics branches(List<Branch> branches) {
        return with(all.limits(), all.packs(), all.inlets(), all.capacitors(), all.resistors(), branches, all.leads());
    }

    Electrics leads(List<PublicLead> leads) {
        return with(all.limits(), all.packs(), all.inlets(), all.capacitors(), all.resistors(), all.branches(), leads);
    }

    private Electrics with(
            @Nullable ElectricLimits limits,
            List<Pack> packs,
            List<InletWiring> inlets,
            List<Capacitor> capacitors,
            List<PrechargeResistor> resistors,
            List<Branch> branches,
            List<PublicLead> leads) {
        return new Electrics(
                all.buses(),
                all.lowVoltage(),
                limits,
                packs,
                all.chargers(),
                inlets,
                capacitors,
                resistors,
                all.fuses(),
                all.cables(),
                branches,
                leads,
                all.outlets(),
                List.of());
    }
}
