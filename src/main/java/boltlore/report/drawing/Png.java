package boltlore.report.drawing;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/** A drawing as PNG (ISO/IEC 15948) in eight-bit grey. */
public final class Png {

    /** About 200 dots to the inch, which prints sharp. */
    public static final double DOTS_PER_MM = 8;

    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10};
    private static final int BITS = 8;
    private static final int MM_IN_M = 1000;

    private Png() {}

    public static byte[] of(Drawing drawing) {
        Raster raster = new Raster(drawing.widthMm(), drawing.heightMm(), DOTS_PER_MM);
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Mark.Line line) {
                raster.draw(line);
            } else if (mark instanceof Mark.Lettering lettering) {
                StrokeFont.strokes(lettering).forEach(raster::draw);
            }
        }
        return file(raster);
    }

    private static byte[] file(Raster raster) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(SIGNATURE);
        // Width, height, bits, grey, and the standard's only compression, filter and plain order of rows.
        chunk(
                out,
                "IHDR",
                ByteBuffer.allocate(13)
                        .putInt(raster.width())
                        .putInt(raster.height())
                        .put((byte) BITS)
                        .array());
        int perMetre = (int) (DOTS_PER_MM * MM_IN_M);
        chunk(
                out,
                "pHYs",
                ByteBuffer.allocate(9)
                        .putInt(perMetre)
                        .putInt(perMetre)
                        .put((byte) 1)
                        .array());
        chunk(out, "IDAT", packed(raster));
        chunk(out, "IEND", new byte[0]);
        return out.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream out, String type, byte[] data) {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 check = new CRC32();
        check.update(name);
        check.update(data);
        out.writeBytes(ByteBuffer.allocate(Integer.BYTES).putInt(data.length).array());
        out.writeBytes(name);
        out.writeBytes(data);
        out.writeBytes(ByteBuffer.allocate(Integer.BYTES)
                .putInt((int) check.getValue())
                .array());
    }

    /** Rows as they are, each after a 0 for 'not filtered'. */
    private static byte[] packed(Raster raster) {
        byte[] rows = new byte[(raster.width() + 1) * raster.height()];
        for (int row = 0; row < raster.height(); row++) {
            raster.row(row, rows, row * (raster.width() + 1) + 1);
        }
        // Most of it is white paper: more effort would take a quarter off the size and cost two and a half times as
        // long.
        Deflater deflater = new Deflater(Deflater.BEST_SPEED);
        deflater.setInput(rows);
        deflater.finish();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        byte[] buffer = new byte[8192];
        while (!deflater.finished()) {
            out.write(buffer, 0, deflater.deflate(buffer));
        }
        deflater.end();
        return out.toByteArray();
    }
}
