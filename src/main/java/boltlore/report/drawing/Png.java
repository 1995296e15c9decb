package boltlore.report.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * A drawing as PNG (ISO/IEC 15948) in sixteen greys, which soften its edges. The JDK draws the dots; its writer of image
 * files is left out, which tries every filter on every row and takes four times as long for as large a file.
 */
public final class Png {

    /** About 200 dots to the inch, which prints sharp with soft edges. */
    public static final int DOTS_PER_MM = 8;

    private static final int MM_IN_M = 1000;
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10};

    private static final float[] DASHES_MM = {2, 1};
    private static final int BITS = 4;
    private static final int DOTS_IN_BYTE = Byte.SIZE / BITS;
    private static final byte WHITE = (byte) 0xFF;
    private static final byte BLACK = 0;
    private static final IndexColorModel GREYS = greys(BITS);

    /** So many codes are kept: the parts of a large catalogue, of some 300 bytes each. */
    private static final int KEPT = 8192;

    private static final Map<String, byte[]> CODES = new ConcurrentHashMap<>();

    private Png() {}

    /** A code alone; the same parts are picked for one order after another, so each is drawn once. */
    public static byte[] code(String text) {
        byte[] known = CODES.get(text);
        if (known != null) {
            return known.clone();
        }
        byte[] drawn = alone(text);
        if (CODES.size() < KEPT) {
            CODES.put(text, drawn.clone());
        }
        return drawn;
    }

    /**
     * The same dots as of its drawing, set without a pen: the squares of a code alone are whole dots, and whole bytes. The
     * pen takes twice as long, 70 ms more for the 280 codes of a program's first order.
     */
    private static byte[] alone(String text) {
        Drawing drawing = MachineCode.alone(text);
        Mark.Code code = (Mark.Code) drawing.marks().get(0);
        int square = dots(code.sideMm() / code.squares().side());
        int high = dots(drawing.heightMm());
        int wide = dots(drawing.widthMm()) / DOTS_IN_BYTE;
        int left = dots(code.at().xMm()) / DOTS_IN_BYTE;
        byte[] packed = new byte[wide * high];
        Arrays.fill(packed, WHITE);
        for (MachineCode.Run run : code.squares().dark()) {
            int from = left + run.from() * square / DOTS_IN_BYTE;
            int top = dots(code.at().yMm()) + run.row() * square;
            for (int row = top; row < top + square; row++) {
                Arrays.fill(packed, row * wide + from, row * wide + from + run.count() * square / DOTS_IN_BYTE, BLACK);
            }
        }
        return file(wide * DOTS_IN_BYTE, high, packed);
    }

    public static byte[] encode(Drawing drawing) {
        BufferedImage image = image(drawing);
        return file(
                image.getWidth(),
                image.getHeight(),
                ((DataBufferByte) image.getRaster().getDataBuffer()).getData());
    }

    private static BufferedImage image(Drawing drawing) {
        BufferedImage image = new BufferedImage(
                dots(drawing.widthMm()), dots(drawing.heightMm()), BufferedImage.TYPE_BYTE_BINARY, GREYS);
        Graphics2D pen = image.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, image.getWidth(), image.getHeight());
        pen.setColor(Color.BLACK);
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.setTransform(AffineTransform.getScaleInstance(DOTS_PER_MM, DOTS_PER_MM));
        drawing.marks().forEach(mark -> draw(mark, pen));
        pen.dispose();
        return image;
    }

    private static int dots(double mm) {
        return (int) Math.ceil(mm * DOTS_PER_MM);
    }

    private static IndexColorModel greys(int bits) {
        byte[] greys = new byte[1 << bits];
        for (int i = 0; i < greys.length; i++) {
            greys[i] = (byte) (255 * i / (greys.length - 1));
        }
        return new IndexColorModel(bits, greys.length, greys, greys, greys);
    }

    /** Corners are round: pointed ones come out differently from one Java to the next. */
    private static void draw(Mark mark, Graphics2D pen) {
        if (mark instanceof Mark.Line line) {
            pen.setStroke(new BasicStroke(
                    (float) line.penMm(),
                    BasicStroke.CAP_BUTT,
                    BasicStroke.JOIN_ROUND,
                    1,
                    line.dashed() ? DASHES_MM : null,
                    0));
            pen.draw(path(line));
        } else if (mark instanceof Mark.Code code) {
            code(code, pen);
        } else if (mark instanceof Mark.Lettering lettering) {
            pen.fill(Typeface.outline(lettering));
        }
    }

    /** Edges between the dots alone are softened: whole dots are filled without the work that it takes. */
    private static void code(Mark.Code code, Graphics2D pen) {
        MachineCode.Squares squares = code.squares();
        double side = code.sideMm() / squares.side();
        boolean soft = !(wholeDots(side)
                && wholeDots(code.at().xMm())
                && wholeDots(code.at().yMm()));
        pen.setRenderingHint(
                RenderingHints.KEY_ANTIALIASING,
                soft ? RenderingHints.VALUE_ANTIALIAS_ON : RenderingHints.VALUE_ANTIALIAS_OFF);
        Path2D dark = new Path2D.Double();
        for (MachineCode.Run run : squares.dark()) {
            Rectangle2D bar = new Rectangle2D.Double(
                    code.at().xMm() + run.from() * side, code.at().yMm() + run.row() * side, run.count() * side, side);
            if (soft) {
                dark.append(bar, false);
            } else {
                pen.fill(bar);
            }
        }
        pen.fill(dark);
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    }

    private static boolean wholeDots(double mm) {
        return Math.rint(mm * DOTS_PER_MM) == mm * DOTS_PER_MM;
    }

    private static Path2D path(Mark.Line line) {
        Path2D path = new Path2D.Double();
        Point first = line.points().get(0);
        path.moveTo(first.xMm(), first.yMm());
        line.openPoints().skip(1).forEach(point -> path.lineTo(point.xMm(), point.yMm()));
        if (line.isClosed()) {
            path.closePath();
        }
        return path;
    }

    /** @param packed rows of dots from the top, two dots a byte */
    private static byte[] file(int width, int height, byte[] packed) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(SIGNATURE);
        // Width, height, bits of a dot, grey, and the standard's only compression, filter and plain order of rows.
        ByteBuffer head = ByteBuffer.allocate(13).putInt(width).putInt(height);
        chunk(out, "IHDR", head.put((byte) BITS).array());
        ByteBuffer size = ByteBuffer.allocate(9).putInt(DOTS_PER_MM * MM_IN_M).putInt(DOTS_PER_MM * MM_IN_M);
        chunk(out, "pHYs", size.put((byte) 1).array());
        chunk(out, "IDAT", deflated(rows(packed, height)));
        chunk(out, "IEND", new byte[0]);
        return out.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream out, String type, byte[] data) {
        byte[] body = ByteBuffer.allocate(Integer.BYTES + data.length)
                .put(type.getBytes(StandardCharsets.US_ASCII))
                .put(data)
                .array();
        CRC32 check = new CRC32();
        check.update(body);
        out.writeBytes(ByteBuffer.allocate(Integer.BYTES).putInt(data.length).array());
        out.writeBytes(body);
        out.writeBytes(ByteBuffer.allocate(Integer.BYTES)
                .putInt((int) check.getValue())
                .array());
    }

    /** As the image packs them, each after a 0 for 'not filtered'. */
    private static byte[] rows(byte[] packed, int height) {
        int wide = packed.length / height;
        byte[] rows = new byte[packed.length + height];
        for (int row = 0; row < height; row++) {
            System.arraycopy(packed, row * wide, rows, row * (wide + 1) + 1, wide);
        }
        return rows;
    }

    /** With little effort: most of it is white paper. */
    private static byte[] deflated(byte[] bytes) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Deflater deflater = new Deflater(Deflater.BEST_SPEED);
        try (DeflaterOutputStream packing = new DeflaterOutputStream(out, deflater, 8192)) {
            packing.write(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            deflater.end();
        }
        return out.toByteArray();
    }
}
