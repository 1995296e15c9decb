package boltlore.report.json;

import boltlore.json.JsonText;
import boltlore.report.Page;
import boltlore.report.SheetFile;
import boltlore.report.Workbook;
import boltlore.report.WorkbookWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** One file a workbook. Keys are the model's own, in a fixed order; decimals are text, so that no reader rounds them. */
public final class JsonWriter implements WorkbookWriter {

    @Override
    public List<SheetFile> write(Workbook workbook) {
        return List.of(new SheetFile(workbook.file() + ".json", bytes(workbook)));
    }

    static byte[] bytes(Workbook workbook) {
        JsonText json = new JsonText(1)
                .brokenObject()
                .put("title", workbook.title())
                .put("subject", workbook.subject())
                .put("author", workbook.author())
                .put("dated", workbook.dated().toString());
        json.key("pages").brokenList();
        workbook.pages().forEach(page -> page(json, page));
        return (json.end().end().written() + '\n').getBytes(StandardCharsets.UTF_8);
    }

    private static void page(JsonText json, Page page) {
        JsonBlocks blocks = new JsonBlocks(json);
        json.brokenObject().put("page", page.name());
        json.key("blocks").brokenList();
        page.blocks().forEach(block -> block.as(blocks));
        json.end().end();
    }
}
