package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.measure.PartNumber;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;
import java.util.TreeSet;

/** The parts that come inside a bought assembly: it is bought, and paid for, whole. */
final class BoughtWhole {

    private BoughtWhole() {}

    static Set<PartNumber> inside(Catalogue catalogue) {
        Set<PartNumber> inside = new TreeSet<>();
        Deque<Part> open = new ArrayDeque<>();
        catalogue.parts().values().stream()
                .filter(part -> part.source() == Source.BUY)
                .forEach(open::add);
        while (!open.isEmpty()) {
            for (Contained child : open.remove().contains()) {
                if (inside.add(child.part())) {
                    open.add(catalogue.part(child.part()));
                }
            }
        }
        return inside;
    }
}
