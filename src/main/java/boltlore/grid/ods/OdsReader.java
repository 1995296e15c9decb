package boltlore.grid.ods;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.grid.Sheet;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/** Reads a spreadsheet of the Open Document format. It opens nothing but the cells, and follows no link. */
public final class OdsReader {

    /** Unpacked, 64 MB: a sheet of some hundred thousand cells. */
    private static final int MOST_BYTES = 64 * 1024 * 1024;

    /** A list of parts packs to a tenth; what packs to less than a two-hundredth holds nothing but repetition. */
    private static final int MOST_RATIO = 200;

    private static final String EXPECTED = "a spreadsheet as ODS, XLSX, XLS or CSV";

    private OdsReader() {}

    /** Its sheets, or what is wrong with it. */
    public static Outcome<List<Sheet>> read(String file, byte[] bytes) {
        try {
            byte[] content = null;
            try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
                for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                    String name = entry.getName().toLowerCase(Locale.ROOT);
                    if (name.startsWith("basic/") || name.startsWith("scripts/")) {
                        return refused(file, "a spreadsheet with macros", "Save it without macros.");
                    }
                    if (name.equals("content.xml") && content == null) {
                        content = unpacked(zip, bytes.length);
                        if (content == null) {
                            return refused(
                                    file,
                                    "a spreadsheet that unpacks to more than 64 MB, or to 200 times its size",
                                    "Copy the list alone into a new one.");
                        }
                    }
                }
            }
            return content == null
                    ? refused(file, "a zip archive without content.xml", "Save it again as ODS.")
                    : Outcome.sound(sheets(content));
        } catch (IOException | XMLStreamException | IllegalArgumentException broken) {
            return refused(file, "a spreadsheet that is cut off or damaged", "Save it again.");
        } catch (OdsTables.TooLarge large) {
            return refused(file, large.getMessage(), "Copy the list alone into a new one.");
        }
    }

    private static byte @Nullable [] unpacked(ZipInputStream zip, int packed) throws IOException {
        long most = Math.min(MOST_BYTES, Math.max(1024L * 1024, (long) packed * MOST_RATIO));
        byte[] read = zip.readNBytes((int) most + 1);
        return read.length > most ? null : read;
    }

    private static List<Sheet> sheets(byte[] content) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        // No document type, so no entity of its own and nothing fetched from elsewhere.
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
        XMLStreamReader xml = factory.createXMLStreamReader(new ByteArrayInputStream(content));
        try {
            return new OdsTables(xml).read();
        } finally {
            xml.close();
        }
    }

    private static Outcome<List<Sheet>> refused(String file, String found, String advice) {
        return Outcome.faulty(Fault.of(file, found, EXPECTED, advice));
    }
}
