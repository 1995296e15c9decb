package boltlore.report.xlsx;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.grid.Sheet;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Reads workbooks that other programs wrote, XLSX (ECMA-376) and XLS, as plain sheets of cells. No formula is calculated. */
public final class WorkbookReader {

    /** What one part of the archive may unpack to: 64 MB. */
    private static final long MOST_UNPACKED = 64L * 1024 * 1024;

    private static final String EXPECTED = "a workbook as XLSX, XLS, ODS or CSV";

    static {
        // What packs to less than a two-hundredth of its size holds nothing but repetition.
        ZipSecureFile.setMinInflateRatio(0.005);
        ZipSecureFile.setMaxEntrySize(MOST_UNPACKED);
        ZipSecureFile.setMaxTextSize(MOST_UNPACKED / 4);
        ZipSecureFile.setMaxFileCount(2_000);
    }

    private WorkbookReader() {}

    /** Its sheets, or what is wrong with it; macros are refused, links to other files never followed. */
    public static Outcome<List<Sheet>> read(String file, byte[] bytes) {
        try {
            return FileMagic.valueOf(bytes) == FileMagic.OLE2 ? old(file, bytes) : packed(file, bytes);
        } catch (EncryptedDocumentException locked) {
            return refused(file, "a workbook with a password", "Save it without one.");
        } catch (IOException | InvalidFormatException | RuntimeException broken) {
            // The library meets a damaged file with whatever its code runs into first.
            return refused(
                    file,
                    "a workbook that is cut off, damaged or far larger than it looks",
                    "Save it again, or copy the list alone into a new one.");
        }
    }

    private static Outcome<List<Sheet>> old(String file, byte[] bytes) throws IOException {
        try (POIFSFileSystem system = new POIFSFileSystem(new ByteArrayInputStream(bytes))) {
            if (system.getRoot().hasEntryCaseInsensitive("_VBA_PROJECT_CUR")) {
                return macros(file);
            }
            if (system.getRoot().hasEntryCaseInsensitive("EncryptedPackage")) {
                return refused(file, "a workbook with a password", "Save it without one.");
            }
            try (HSSFWorkbook workbook = new HSSFWorkbook(system)) {
                return Outcome.sound(sheets(workbook));
            }
        }
    }

    private static Outcome<List<Sheet>> packed(String file, byte[] bytes) throws IOException, InvalidFormatException {
        try (OPCPackage opened = OPCPackage.open(new ByteArrayInputStream(bytes));
                XSSFWorkbook workbook = new XSSFWorkbook(opened)) {
            return workbook.isMacroEnabled() ? macros(file) : Outcome.sound(sheets(workbook));
        }
    }

    private static List<Sheet> sheets(Workbook workbook) {
        List<Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
            sheets.add(new SheetReader(workbook, i).read());
        }
        return List.copyOf(sheets);
    }

    private static Outcome<List<Sheet>> macros(String file) {
        return refused(file, "a workbook with macros", "Save it without macros.");
    }

    private static Outcome<List<Sheet>> refused(String file, String found, String advice) {
        return Outcome.faulty(Fault.of(file, found, EXPECTED, advice));
    }
}
