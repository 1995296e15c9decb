package boltlore.report.xlsx;

import boltlore.report.Utf8;
import boltlore.report.Workbook;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Optional;
import java.util.zip.Deflater;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackagePartName;
import org.apache.poi.openxml4j.opc.PackageProperties;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.openxml4j.opc.TargetMode;

/** The package that holds a workbook's parts. All its times are noon of the workbook's date. */
final class XlsxPackage {

    private static final String RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/";
    private static final String OFFICE = "application/vnd.openxmlformats-officedocument.";

    /** What a part is, and what its owner calls its relation to it. */
    enum PartKind {
        WORKBOOK("officeDocument", "spreadsheetml.sheet.main+xml"),
        STYLES("styles", "spreadsheetml.styles+xml"),
        TEXTS("sharedStrings", "spreadsheetml.sharedStrings+xml"),
        SHEET("worksheet", "spreadsheetml.worksheet+xml"),
        DRAWING("drawing", "drawing+xml"),
        CHART("chart", "drawingml.chart+xml"),
        IMAGE("image", "");

        private final String relation;
        private final String contentType;

        PartKind(String relation, String contentType) {
            this.relation = RELATIONS + relation;
            this.contentType = contentType.isEmpty() ? "image/png" : OFFICE + contentType;
        }
    }

    /** A part of the package, and by which relation its owner knows it. */
    record Part(PackagePart part, String relation) {

        void write(String xml) {
            write(new Utf8(xml.length()).append(xml));
        }

        void write(byte[] content) {
            write(new Utf8(content.length).append(content));
        }

        /** Writes its XML, in one piece or several. */
        void write(Utf8... xml) {
            try (OutputStream out = part.getOutputStream()) {
                for (Utf8 piece : xml) {
                    piece.writeTo(out);
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    static {
        JavaXml.choose();
    }

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream(64 * 1024);
    private final OPCPackage opc;

    XlsxPackage(Workbook workbook) {
        LocalTime noon = LocalTime.NOON;
        DatedZip zip = new DatedZip(
                bytes,
                workbook.dated().atTime(noon).atZone(ZoneId.systemDefault()).toInstant());
        zip.setLevel(Deflater.BEST_SPEED);
        opc = OPCPackage.create(zip);
        try {
            properties(
                    opc.getPackageProperties(),
                    workbook,
                    workbook.dated().atTime(noon).toInstant(ZoneOffset.UTC));
        } catch (InvalidFormatException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void properties(PackageProperties properties, Workbook workbook, Instant time)
            throws InvalidFormatException {
        Optional<Date> date = Optional.of(Date.from(time));
        properties.setTitleProperty(legal(workbook.title()));
        properties.setSubjectProperty(legal(workbook.subject()));
        properties.setCreatorProperty(legal(workbook.author()));
        properties.setLastModifiedByProperty(legal(workbook.author()));
        properties.setCreatedProperty(date);
        properties.setModifiedProperty(date);
    }

    /** Text that XML may hold; the property part's writer escapes markup itself. */
    private static String legal(String text) {
        return text.replaceAll("[\\p{Cc}\\p{Cs}\uFFFE\uFFFF]", "\uFFFD");
    }

    /** The part that all others hang under. */
    Part root(PartKind kind, String name) {
        PackagePartName partName = partName(name);
        PackagePart part = opc.createPart(partName, kind.contentType);
        return new Part(
                part,
                opc.addRelationship(partName, TargetMode.INTERNAL, kind.relation)
                        .getId());
    }

    Part under(Part owner, PartKind kind, String name) {
        PackagePartName partName = partName(name);
        PackagePart part = opc.createPart(partName, kind.contentType);
        return new Part(
                part,
                owner.part()
                        .addRelationship(partName, TargetMode.INTERNAL, kind.relation)
                        .getId());
    }

    private static PackagePartName partName(String name) {
        try {
            return PackagingURIHelper.createPartName(name);
        } catch (InvalidFormatException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Closes the package; nothing can be added afterwards. */
    byte[] toBytes() {
        try {
            opc.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** Gives every entry the same time, in whatever zone the machine stands. */
    private static final class DatedZip extends ZipArchiveOutputStream {

        private final Instant time;

        DatedZip(OutputStream out, Instant time) {
            super(out);
            this.time = time;
        }

        @Override
        public void putArchiveEntry(ZipArchiveEntry entry) throws IOException {
            entry.setTime(time.toEpochMilli());
            super.putArchiveEntry(entry);
        }
    }
}
