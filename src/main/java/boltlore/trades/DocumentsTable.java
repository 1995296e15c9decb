package boltlore.trades;

import boltlore.bill.Item;
import boltlore.catalogue.Document;
import boltlore.measure.Wording;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;
import java.util.List;
import java.util.stream.Stream;

/** Lists the drawings, photos, data sheets and the like of what stands on a page; nothing where there are none. */
public final class DocumentsTable {

    private record Listed(String of, Wording name, Document document) {}

    private static final TableSpec<Listed> DOCUMENTS = TableSpec.<Listed>named("documents")
            .text("of", "Of", 24, Listed::of)
            .said("name", "Name", 34, Listed::name)
            .text(
                    "kind",
                    "Kind",
                    12,
                    listed -> listed.document().kind().written().replace('-', ' '))
            .said("says", "Document", 40, listed -> listed.document().says())
            .text("number", "Number", 16, listed -> listed.document().number())
            .text("issue", "Issue", 6, listed -> listed.document().issue())
            .text(
                    "file",
                    "File in the catalogue folder",
                    44,
                    listed -> listed.document().file());

    private DocumentsTable() {}

    /** Of these parts and of the positions that they stand at, each once. */
    public static void add(PageBuilder page, Stream<Item> items) {
        List<Listed> listed = items.flatMap(DocumentsTable::of).distinct().toList();
        if (!listed.isEmpty()) {
            page.heading("Documents").add(DOCUMENTS.of(listed));
        }
    }

    private static Stream<Listed> of(Item item) {
        String number = item.part().number().text();
        Stream<Listed> ofPart = item.part().upkeep().documents().stream()
                .map(document -> new Listed(number, item.part().name(), document));
        Stream<Listed> ofPosition = item.position().documents().stream()
                .map(document -> new Listed("position", item.position().says(), document));
        return Stream.concat(ofPosition, ofPart);
    }
}
