package boltlore.sheets.json;

import boltlore.sheets.Page;
import boltlore.sheets.SheetFile;
import boltlore.sheets.Workbook;
import boltlore.sheets.WorkbookWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One file a workbook. Keys are the model's own, in a fixed order; decimals are text, so that no reader rounds them. */
public final class JsonWriter implements WorkbookWriter {

    @Override
    public List<SheetFile> write(Workbook workbook) {
        return List.of(SheetFile.utf8(workbook.file() + ".json", text(workbook)));
    }

    static String text(Workbook workbook) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("title", workbook.title());
        object.put("subject", workbook.subject());
        object.put("author", workbook.author());
        object.put("dated", workbook.dated().toString());
        object.put("pages", workbook.pages().stream().map(JsonWriter::page).toList());
        return JsonText.of(object);
    }

    private static Map<String, Object> page(Page page) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("page", page.name());
        object.put(
                "blocks",
                page.blocks().stream().map(block -> block.as(new JsonBlocks())).toList());
        return object;
    }
}
