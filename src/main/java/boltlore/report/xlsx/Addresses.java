package boltlore.report.xlsx;

import boltlore.report.Place;
import boltlore.report.Utf8;
import java.util.List;

/** Where everything that a formula may refer to has come to stand. */
final class Addresses {

    private final List<LaidPage> pages;
    private final List<String> prefixes;

    Addresses(List<LaidPage> pages, List<String> sheetNames) {
        this.pages = pages;
        this.prefixes =
                sheetNames.stream().map(name -> Xml.escaped(Ref.on(name, ""))).toList();
    }

    /**
     * Where a formula stands.
     *
     * @param block name of its table or particulars
     * @param row of the grid
     */
    record Here(int page, String block, int row) {
        static final Here NOWHERE = new Here(0, "", 0);
    }

    Utf8 append(Utf8 xml, Place place, Here here) {
        LaidPage page = pages.get(page(place.page(), here));
        String block = place.block().isEmpty() ? here.block() : place.block();
        xml.append(sheetPrefix(place.page(), here));
        if (!page.has(block)) {
            LaidPage.Spot spot = page.spot(block, place.row());
            return Ref.append(xml, spot.column(), spot.row());
        }
        LaidTable table = page.table(block);
        int row = place.row().isEmpty()
                ? here.row()
                : table.firstRow() + table.table().row(place.row());
        return Ref.append(xml, table.column(place.column()), row);
    }

    LaidTable table(String page, String name, Here here) {
        return pages.get(page(page, here)).table(name.isEmpty() ? here.block() : name);
    }

    /** The sheet's name in front of an address, as XML, where it is another sheet's. */
    String sheetPrefix(String page, Here here) {
        int at = page(page, here);
        return at == here.page() ? "" : prefixes.get(at);
    }

    private int page(String name, Here here) {
        if (name.isEmpty()) {
            return here.page();
        }
        for (int i = 0; i < pages.size(); i++) {
            if (pages.get(i).page().name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException("No page '" + name + "'");
    }
}
