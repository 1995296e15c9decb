package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.measure.PartNumber;
import java.util.Set;
import java.util.TreeSet;

/** The parts that come inside a bought assembly: it is bought, and paid for, whole. */
final class BoughtWhole {

    private BoughtWhole() {}

    static Set<PartNumber> inside(Catalogue catalogue) {
        Set<PartNumber> inside = new TreeSet<>();
        catalogue.parts().values().stream()
                .filter(part -> part.source() == Source.BUY)
                .forEach(assembly -> collect(assembly, catalogue, inside));
        return inside;
    }

    private static void collect(Part assembly, Catalogue catalogue, Set<PartNumber> inside) {
        for (Contained child : assembly.contains()) {
            inside.add(child.part());
            collect(catalogue.part(child.part()), catalogue, inside);
        }
    }
}
