package boltlore.report.xlsx;

import boltlore.report.Page;
import boltlore.report.Table;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What all tables of a page need, by table name.
 *
 * @param main name of the table with the most cells, whose columns suit the page best; or empty where there is none
 */
record Needs(Map<String, List<Need>> byTable, String main) {

    static Needs of(Page page) {
        Map<String, List<Need>> byTable = new LinkedHashMap<>();
        String main = "";
        int most = 0;
        for (Table table : page.tables().toList()) {
            byTable.put(table.name(), Need.of(table));
            int cells = (table.rows().size() + 1) * table.columns().size();
            if (cells > most) {
                main = table.name();
                most = cells;
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
