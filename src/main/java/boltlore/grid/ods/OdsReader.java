package boltlore.grid.ods;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.grid.Sheet;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Reads a spreadsheet of the Open Document format. It opens nothing but the cells, and follows no link. */
public final class OdsReader {

    /** Unpacked, 64 MB: a sheet of some hundred thousand cells. */
    private static final int MOST_BYTES = 64 * 1024 * 1024;

    /** A list of parts packs to a tenth; what packs to less than a two-hundredth holds nothing but repetition. */
    private static final int MOST_RATIO = 200;

    /** All entries of the archive together, 256 MB: pictures are passed over, but must be unpacked for it. */
    private static final long MOST_IN_ALL = 256L * 1024 * 1024;

    private static final int BUFFER = 64 * 1024;
    private static final String TOO_LARGE = "a spreadsheet that unpacks to more than 64 MB, or to 200 times its size";

    private static final String EXPECTED = "a spreadsheet as ODS, XLSX, XLS or CSV";

    private OdsReader() {}

    /** Its sheets, or what is wrong with it. */
    public static Outcome<List<Sheet>> read(String file, byte[] bytes) {
        try {
            byte[] content = null;
            long budget = MOST_IN_ALL;
            try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
                for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                    String name = entry.getName().toLowerCase(Locale.ROOT);
                    if (name.startsWith("basic/") || name.startsWith("scripts/")) {
                        return refused(file, "a spreadsheet with macros", "Save it without macros.");
                    }
                    boolean cells = name.equals("content.xml") && content == null;
                    long most = Math.min(budget, cells ? mostCells(bytes.length) : MOST_IN_ALL);
                    ByteArrayOutputStream kept = new ByteArrayOutputStream();
                    long read = unpack(zip, cells ? kept : OutputStream.nullOutputStream(), most);
                    if (read > most) {
                        return refused(file, TOO_LARGE, "Copy the list alone into a new one.");
                    }
                    budget -= read;
                    content = cells ? kept.toByteArray() : content;
                }
            }
            return content == null
                    ? refused(file, "a zip archive without content.xml", "Save it again as ODS.")
                    : Outcome.sound(sheets(content));
        } catch (IOException | XMLStreamException | IllegalArgumentException broken) {
            return refused(file, "a spreadsheet that is cut off or damaged", "Save it again.");
        } catch (OdsTables.TooLarge large) {
            return refused(file, OdsTables.TooLarge.SAYS, "Copy the list alone into a new one.");
        }
    }

    private static long mostCells(int packed) {
        return Math.min(MOST_BYTES, Math.max(1024L * 1024, (long) packed * MOST_RATIO));
    }

    /** How much was unpacked: no more than the bound and a little. */
    private static long unpack(ZipInputStream zip, OutputStream into, long most) throws IOException {
        byte[] buffer = new byte[BUFFER];
        long all = 0;
        for (int read = zip.read(buffer); read >= 0 && all <= most; read = zip.read(buffer)) {
            into.write(buffer, 0, read);
            all += read;
        }
        return all;
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
