package boltlore.report.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.drawing.Png;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.assertj.core.data.Offset;

/**
 * A picture of a workbook as LibreOffice prints it, and the page that it stands on as poppler shows it. The machine's own
 * typefaces are hidden: only the one that stands in for Arial is there, in which columns are narrowest.
 *
 * @param left from the page's left edge, in dots of the page; the other sizes likewise
 */
public record PrintedPicture(int left, int top, int width, int height, BufferedImage picture, BufferedImage page) {

    /** The unit of pdftohtml's places: 1.5 for a point. */
    private static final int DOTS_PER_INCH = 108;

    private static final double FOOT = 0.5 * DOTS_PER_INCH;
    private static final double MM_IN_INCH = 25.4;
    private static final int DARK = 200;
    private static final double SOFT_EDGE = 3;

    /** A picture ends where a column ends, and a column's width is rounded to whole dots of its own. */
    private static final double COLUMNS_ROUNDED = 0.03;

    private static final Pattern PAGE = Pattern.compile("<page number=\"(\\d+)\"");
    private static final Pattern IMAGE = Pattern.compile(
            "<image top=\"(-?\\d+)\" left=\"(-?\\d+)\" width=\"(\\d+)\" height=\"(\\d+)\" src=\"([^\"]+)\"");

    private static final String TYPEFACES = """
            <?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd">
            <fontconfig><dir>%s</dir><cachedir>%s</cachedir>
            <alias binding="same"><family>Arial</family><prefer><family>Liberation Sans</family></prefer></alias>
            </fontconfig>
            """;

    /** File name without its ending to the pictures that are shown, in turn, for the workbooks of a folder. */
    public static Map<String, List<PrintedPicture>> all(Path folder) throws IOException, InterruptedException {
        convert(folder);
        Map<String, List<PrintedPicture>> all = new TreeMap<>();
        for (Path pdf : files(folder, ".pdf").toList()) {
            all.put(pdf.getFileName().toString().replace(".pdf", ""), of(pdf));
        }
        return all;
    }

    /** Prints all workbooks of a folder into it, in one run of LibreOffice. */
    public static void convert(Path folder) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                "soffice",
                "--headless",
                "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                "--convert-to",
                "pdf",
                "--outdir",
                folder.toString()));
        command.addAll(files(folder, ".xlsx").map(Path::toString).toList());
        run(folder, command);
    }

    private static List<PrintedPicture> of(Path pdf) throws IOException, InterruptedException {
        Path folder = Objects.requireNonNull(pdf.getParent());
        run(folder, List.of("pdftohtml", "-q", "-xml", pdf.toString()));
        List<PrintedPicture> pictures = new ArrayList<>();
        for (String page : Files.readString(Path.of(pdf.toString().replace(".pdf", ".xml")))
                .split("(?=<page )", -1)) {
            List<MatchResult> images = IMAGE.matcher(page).results().toList();
            if (!images.isEmpty()) {
                MatchResult number = PAGE.matcher(page).results().findFirst().orElseThrow();
                BufferedImage shown = page(pdf, number.group(1));
                for (MatchResult image : images) {
                    PrintedPicture printed = new PrintedPicture(
                            Integer.parseInt(image.group(2)),
                            Integer.parseInt(image.group(1)),
                            Integer.parseInt(image.group(3)),
                            Integer.parseInt(image.group(4)),
                            ImageIO.read(folder.resolve(image.group(5)).toFile()),
                            shown);
                    if (printed.endsAboveTheFoot()) {
                        pictures.add(printed);
                    }
                }
            }
        }
        return pictures;
    }

    private static BufferedImage page(Path pdf, String number) throws IOException, InterruptedException {
        String resolution = String.valueOf(DOTS_PER_INCH);
        String shown = pdf + "-page-" + number;
        run(
                Objects.requireNonNull(pdf.getParent()),
                List.of(
                        "pdftoppm",
                        "-r",
                        resolution,
                        "-f",
                        number,
                        "-l",
                        number,
                        "-gray",
                        "-png",
                        "-singlefile",
                        pdf.toString(),
                        shown));
        return ImageIO.read(Path.of(shown + ".png").toFile());
    }

    /** A picture that has no room left is put below the foot too, where nothing is shown of it, and again on the next page. */
    private boolean endsAboveTheFoot() {
        return top + height < page.getHeight() - FOOT;
    }

    /** That its last ink at the right and at the foot is on the paper where it should be, and that it is not shrunk. */
    public void assertWhole() {
        assertThat(width * MM_IN_INCH / DOTS_PER_INCH)
                .as("width in mm")
                .isGreaterThan((double) picture.getWidth() / Png.DOTS_PER_MM - 1);
        Extent drawn = Extent.of(picture, 0, 0, picture.getWidth(), picture.getHeight());
        Extent printed = Extent.of(page, left, top, width, height);
        double across = (double) width / picture.getWidth();
        double down = (double) height / picture.getHeight();
        assertThat(across / down).as("width to height").isCloseTo(1, Offset.offset(COLUMNS_ROUNDED));
        assertThat((double) printed.right()).isCloseTo(drawn.right() * across, Offset.offset(SOFT_EDGE));
        assertThat((double) printed.bottom()).isCloseTo(drawn.bottom() * down, Offset.offset(SOFT_EDGE));
    }

    /** Where the last ink is, from the upper left corner of a part of an image. */
    private record Extent(int right, int bottom) {

        static Extent of(BufferedImage image, int left, int top, int width, int height) {
            int right = 0;
            int bottom = 0;
            for (int y = top; y < Math.min(image.getHeight(), top + height); y++) {
                for (int x = left; x < Math.min(image.getWidth(), left + width); x++) {
                    if ((image.getRGB(x, y) & 255) < DARK) {
                        right = Math.max(right, x - left + 1);
                        bottom = Math.max(bottom, y - top + 1);
                    }
                }
            }
            return new Extent(right, bottom);
        }
    }

    private static Stream<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ending)).sorted().toList().stream();
        }
    }

    private static void run(Path folder, List<String> command) throws IOException, InterruptedException {
        ProcessBuilder process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("run.log").toFile());
        process.environment().put("FONTCONFIG_FILE", typefaces(folder).toString());
        Process running = process.start();
        assertThat(running.waitFor(5, TimeUnit.MINUTES))
                .as(command.get(0) + " ended")
                .isTrue();
        assertThat(running.exitValue()).as(command.toString()).isZero();
    }

    private static Path typefaces(Path folder) throws IOException {
        Path fonts = Files.createDirectories(folder.resolve("fonts"));
        Path settings = folder.resolve("fonts.conf");
        if (Files.notExists(settings)) {
            String arial = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
            try (InputStream in = Objects.requireNonNull(PrintedPicture.class.getResourceAsStream(arial), arial)) {
                Files.copy(in, fonts.resolve("arial.ttf"));
            }
            Files.writeString(settings, TYPEFACES.formatted(fonts, folder.resolve("font-cache")));
        }
        return settings;
    }
}
