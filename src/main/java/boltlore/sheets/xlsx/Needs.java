package boltlore.sheets.xlsx;

import boltlore.sheets.Page;
import boltlore.sheets.Table;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What all tables of a page need, by table name.
 *
 * @param main name of the widest table, or empty where there is none
 */
record Needs(Map<String, List<Need>> byTable, String main) {

    static Needs of(Page page) {
        Map<String, List<Need>> byTable = new LinkedHashMap<>();
        page.tables().forEach(table -> byTable.put(table.name(), Need.of(table)));
        String main = "";
        double widest = 0;
        for (Map.Entry<String, List<Need>> entry : byTable.entrySet()) {
            double width = entry.getValue().stream().mapToDouble(Need::usual).sum();
            if (width > widest) {
                main = entry.getKey();
                widest = width;
            }
        }
        return new Needs(byTable, main);
    }

    List<Need> of(Table table) {
        return byTable.getOrDefault(table.name(), List.of());
    }

    List<Need> ofMain() {
        return byTable.getOrDefault(main, List.of());
    }
}
