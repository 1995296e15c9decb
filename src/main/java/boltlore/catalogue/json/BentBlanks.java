package boltlore.catalogue.json;

import boltlore.catalogue.Bending;
import boltlore.catalogue.Blank;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Making;
import boltlore.catalogue.Material;
import boltlore.catalogue.Part;
import java.math.BigDecimal;
import java.util.List;

/** Every blank is of a sheet whose bending is known, and its legs are long enough for its bends. */
final class BentBlanks {

    private final Catalogue catalogue;
    private final Reading reading;

    BentBlanks(Catalogue catalogue, Reading reading) {
        this.catalogue = catalogue;
        this.reading = reading;
    }

    void check() {
        catalogue.parts().values().stream().map(Part::making).forEach(this::check);
    }

    private void check(Making making) {
        Blank blank = making.blank();
        Material sheet =
                making.material() == null ? null : catalogue.materials().get(making.material());
        if (blank != null && (sheet == null || sheet.thicknessMm() == null)) {
            fault(blank, "a 'blank' without a sheet", "a 'material' that has a 'thicknessMm'", "Name the sheet.");
        } else if (blank != null && sheet != null) {
            bends(blank, sheet);
        }
    }

    private void bends(Blank blank, Material sheet) {
        Bending bending = sheet.bending();
        if (bending != null && sheet.thicknessMm() != null) {
            legs(blank, bending, sheet.thicknessMm());
        } else if (!blank.bendsDegrees().isEmpty()) {
            fault(blank, "bends in '" + sheet.name() + "'", "a material with 'bending'", "Add it to the material.");
        }
    }

    private void legs(Blank blank, Bending bending, BigDecimal thicknessMm) {
        List<BigDecimal> bends = blank.bendsDegrees();
        for (int leg = 0; leg < blank.legsMm().size(); leg++) {
            BigDecimal flat = blank.legsMm().get(leg);
            flat = leg == 0 ? flat : flat.subtract(bending.setBackMm(bends.get(leg - 1), thicknessMm));
            flat = leg == bends.size() ? flat : flat.subtract(bending.setBackMm(bends.get(leg), thicknessMm));
            if (flat.signum() < 0) {
                String found = "leg " + (leg + 1) + " of " + blank.legsMm().get(leg) + " mm";
                fault(blank, found, "a leg that reaches to the end of its bends", "Check the radius of the sheet.");
            }
        }
    }

    private void fault(Blank blank, String found, String expected, String advice) {
        reading.faults().add(reading.sources().of(blank).fault(found, expected, advice));
    }
}
