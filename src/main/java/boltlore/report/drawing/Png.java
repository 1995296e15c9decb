package boltlore.report.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** A drawing as PNG (ISO/IEC 15948) in sixteen greys, which soften its edges. */
public final class Png {

    /** About 250 dots to the inch, which prints sharp. */
    public static final int DOTS_PER_MM = 10;

    private static final int MM_IN_M = 1000;

    private static final float[] DASHES_MM = {2, 1};
    private static final IndexColorModel GREYS = greys(4);

    /** Most of it is white paper: more effort costs time and saves little. */
    private static final float LEAST_EFFORT = 0.8f;

    private Png() {}

    public static byte[] of(Drawing drawing) {
        return file(image(drawing));
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
        } else if (mark instanceof Mark.Lettering lettering) {
            pen.fill(Letters.outline(lettering));
        }
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

    private static byte[] file(BufferedImage image) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ImageWriteParam how = writer.getDefaultWriteParam();
        how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        how.setCompressionQuality(LEAST_EFFORT);
        ImageIO.setUseCache(false);
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            IIOMetadata size = writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), how);
            size.mergeTree(size.getNativeMetadataFormatName(), sizeOnPaper(size.getNativeMetadataFormatName()));
            writer.write(null, new IIOImage(image, null, size), how);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    private static IIOMetadataNode sizeOnPaper(String format) {
        IIOMetadataNode dots = new IIOMetadataNode("pHYs");
        dots.setAttribute("pixelsPerUnitXAxis", String.valueOf(DOTS_PER_MM * MM_IN_M));
        dots.setAttribute("pixelsPerUnitYAxis", String.valueOf(DOTS_PER_MM * MM_IN_M));
        dots.setAttribute("unitSpecifier", "meter");
        IIOMetadataNode all = new IIOMetadataNode(format);
        all.appendChild(dots);
        return all;
    }
}
