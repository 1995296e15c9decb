package boltlore.report.xlsx;

import boltlore.report.Report;
import boltlore.report.ReportWriter;
import boltlore.report.SheetFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.TransformerFactory;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.poi.ooxml.POIXMLDocumentPart;
import org.apache.poi.ooxml.POIXMLProperties.CoreProperties;
import org.apache.poi.ooxml.POIXMLRelation;
import org.apache.poi.xssf.usermodel.XSSFFactory;
import org.apache.poi.xssf.usermodel.XSSFRelation;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;

/**
 * One file a workbook. Formulas are live and carry the core's own decimals as their results; text can never become a
 * formula; the same workbook gives the same bytes: all times are noon of the workbook's date.
 */
public final class XlsxWriter implements ReportWriter {

    private static final Pattern ILLEGAL = Pattern.compile("[\\p{Cc}\\p{Cs}\uFFFE\uFFFF]");

    static {
        // Java's own XML tools: POI would else search every library for some, for each part anew.
        name(TransformerFactory.class, TransformerFactory.newDefaultInstance());
        name(DocumentBuilderFactory.class, DocumentBuilderFactory.newDefaultInstance());
    }

    private static void name(Class<?> kind, Object own) {
        if (System.getProperty(kind.getName()) == null) {
            System.setProperty(kind.getName(), own.getClass().getName());
        }
    }

    @Override
    public List<SheetFile> write(Report report) {
        return List.of(new SheetFile(report.file() + ".xlsx", bytes(report)));
    }

    private static byte[] bytes(Report report) {
        // Not closed but reverted at the end, for POI writes a workbook once more when it is closed.
        XSSFWorkbook book = new XSSFWorkbook(new StreamingFactory());
        try {
            properties(book.getProperties().getCoreProperties(), report);
            List<LaidPage.Paged> paged = report.pages().stream()
                    .map(page -> PageLayout.lay(page, page.languageIn(report)))
                    .toList();
            List<LaidPage> pages = paged.stream().map(LaidPage.Paged::page).toList();
            WorkbookNames names = new WorkbookNames(report.pages());
            Map<String, CellStyles> styles = new HashMap<>();
            FormulaText formulas = new FormulaText(
                    pages, report.pages().stream().map(names::sheet).toList());
            for (int i = 0; i < pages.size(); i++) {
                CellStyles ofPage = styles.computeIfAbsent(
                        pages.get(i).page().languageIn(report), language -> new CellStyles(book, language));
                StreamedSheet sheet = (StreamedSheet)
                        book.createSheet(names.sheet(pages.get(i).page()));
                sheet.stream(pages.get(i), i, ofPage, formulas);
                new SheetWriter(book, sheet, paged.get(i), names).write();
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream(64 * 1024);
            try (DatedZip zip = new DatedZip(bytes, noon(report, ZoneId.systemDefault()))) {
                zip.setLevel(Deflater.BEST_SPEED);
                book.write(zip);
            }
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            book.getPackage().revert();
        }
    }

    private static Instant noon(Report report, ZoneId zone) {
        return report.dated().atTime(LocalTime.NOON).atZone(zone).toInstant();
    }

    private static void properties(CoreProperties properties, Report report) {
        Optional<Date> date = Optional.of(Date.from(noon(report, ZoneOffset.UTC)));
        properties.setTitle(legal(report.title()));
        properties.setSubjectProperty(legal(report.subject()));
        properties.setCreator(legal(report.author()));
        properties.setLastModifiedByUser(legal(report.author()));
        properties.setCreated(date);
        properties.setModified(date);
    }

    /** Text that XML may hold; the property part's writer escapes markup itself. */
    private static String legal(String text) {
        return ILLEGAL.matcher(text).replaceAll("\uFFFD");
    }

    /** Makes worksheets that take their rows as a stream. */
    private static final class StreamingFactory extends XSSFFactory {

        @Override
        public POIXMLDocumentPart newDocumentPart(POIXMLRelation kind) {
            return kind == XSSFRelation.WORKSHEET ? new StreamedSheet() : super.newDocumentPart(kind);
        }
    }

    /**
     * Gives every entry the same time, in whatever zone the machine stands. Small pictures lie in it as they are, for they
     * are packed: packing the 280 codes of a picking list once more took 14 ms instead of 3, and made it larger.
     */
    private static final class DatedZip extends ZipArchiveOutputStream {

        private static final int SMALL = 1024;

        private final Instant time;
        private final ByteArrayOutputStream picture = new ByteArrayOutputStream(1024);
        private @Nullable ZipArchiveEntry ofPicture;

        DatedZip(OutputStream out, Instant time) {
            super(out);
            this.time = time;
        }

        @Override
        public void putArchiveEntry(ZipArchiveEntry entry) throws IOException {
            entry.setTime(time.toEpochMilli());
            if (entry.getName().endsWith(".png")) {
                ofPicture = entry;
            } else {
                super.putArchiveEntry(entry);
            }
        }

        @Override
        public void write(byte[] bytes, int from, int count) throws IOException {
            if (ofPicture == null) {
                super.write(bytes, from, count);
            } else {
                picture.write(bytes, from, count);
            }
        }

        @Override
        public void closeArchiveEntry() throws IOException {
            ZipArchiveEntry entry = ofPicture;
            if (entry != null) {
                ofPicture = null;
                put(entry, picture.toByteArray());
                picture.reset();
            }
            super.closeArchiveEntry();
        }

        /** What is stored as it is needs its size and check sum told first. */
        private void put(ZipArchiveEntry entry, byte[] bytes) throws IOException {
            if (bytes.length < SMALL) {
                CRC32 check = new CRC32();
                check.update(bytes);
                entry.setMethod(ZipEntry.STORED);
                entry.setSize(bytes.length);
                entry.setCrc(check.getValue());
            }
            super.putArchiveEntry(entry);
            super.write(bytes, 0, bytes.length);
        }
    }
}
