package boltlore.report.drawing;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.ArrayList;
import java.util.List;

/**
 * A text as a QR Code (ISO/IEC 18004), which cameras and scanners read from any side. Up to 25 capitals, digits, blanks and
 * signs of {@code $%*+-./:} make the smallest code, of 21 dark or light squares a side.
 */
public final class MachineCode {

    /** The narrowest square that common hand scanners read from paper of 300 dots to the inch; common practice, no source. */
    public static final double LEAST_SQUARE_MM = 0.25;

    /** White that stays around it, in squares: of ISO/IEC 18004. */
    static final int QUIET = 4;

    private static final int LONGEST = 100;
    private static final double HALF_MM = 0.5;

    private MachineCode() {}

    /**
     * Neighbouring dark squares of one row.
     *
     * @param from the first one's column
     * @param count how many they are
     */
    public record Run(int row, int from, int count) {}

    /**
     * What is drawn of a text: the search for the mask that reads best takes time, so it is made once.
     *
     * @param side how many squares a side has
     */
    public record Squares(int side, List<Run> dark) {}

    /** @throws IllegalArgumentException for an empty text, or one of more than 100 characters */
    static Squares squares(String text) {
        if (text.isEmpty() || text.length() > LONGEST) {
            throw new IllegalArgumentException("A code holds 1 to " + LONGEST + " characters, not " + text.length());
        }
        try {
            ByteMatrix matrix = Encoder.encode(text, ErrorCorrectionLevel.L).getMatrix();
            List<Run> dark = new ArrayList<>();
            for (int row = 0; row < matrix.getHeight(); row++) {
                row(matrix, row, dark);
            }
            return new Squares(matrix.getWidth(), List.copyOf(dark));
        } catch (WriterException e) {
            throw new IllegalArgumentException(text, e);
        }
    }

    private static void row(ByteMatrix matrix, int row, List<Run> dark) {
        int from = 0;
        while (from < matrix.getWidth()) {
            int to = from;
            while (to < matrix.getWidth() && matrix.get(to, row) == 1) {
                to++;
            }
            if (to > from) {
                dark.add(new Run(row, from, to - from));
            }
            from = to + 1;
        }
    }

    /** A code alone, each square half a millimetre, so that its edges are sharp dots; half of the white stands around it. */
    public static Drawing alone(String text) {
        double white = HALF_MM * QUIET / 2;
        Squares squares = squares(text);
        double side = HALF_MM * squares.side();
        return new Drawing(
                side + 2 * white,
                side + 2 * white,
                text,
                List.of(new Mark.Code(new Point(white, white), text, side, squares)));
    }
}
