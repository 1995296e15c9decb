package boltlore.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.stream.ImageInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

@DisplayName("A drawing")
class DrawingTest {

    private static final Drawing SQUARE = new Drawing(
            20,
            10,
            "A square & \"its\" <middle>",
            List.of(
                    Mark.outline(List.of(new Point(2, 2), new Point(8, 2), new Point(8, 8), new Point(2, 8))),
                    Mark.line(new Point(12, 5), new Point(18, 5)),
                    Mark.centred(new Point(5, 5), "45\u00B0", 2)));

    @Nested
    @DisplayName("as PNG, read by the Java library")
    class AsPng {

        private static final int GREYS = 16;

        private final BufferedImage image = image(SQUARE);

        @Test
        void has_eight_dots_for_each_millimetre() {
            assertThat(image.getWidth()).isEqualTo(160);
            assertThat(image.getHeight()).isEqualTo(80);
        }

        @Test
        void says_how_large_it_is_on_paper() throws IOException {
            assertThat(dotsPerMm()).isCloseTo(8, Offset.offset(0.01));
        }

        @Test
        void is_black_on_its_lines_and_white_beside_them() {
            assertThat(grey(2, 5)).isZero();
            assertThat(grey(5, 8)).isZero();
            assertThat(grey(1, 5)).isEqualTo(GREYS - 1);
            assertThat(grey(10, 5)).isEqualTo(GREYS - 1);
        }

        @Test
        void carries_lettering() {
            long black = IntStream.range(24, 56)
                    .filter(x -> image.getRaster().getSample(x, 40, 0) < GREYS / 2)
                    .count();
            assertThat(black).isPositive();
        }

        private int grey(double xMm, double yMm) {
            return image.getRaster().getSample((int) (xMm * 8), (int) (yMm * 8), 0);
        }

        private double dotsPerMm() throws IOException {
            try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(Png.encode(SQUARE)))) {
                var reader = ImageIO.getImageReaders(in).next();
                reader.setInput(in);
                IIOMetadata metadata = reader.getImageMetadata(0);
                NodeList nodes =
                        ((Element) metadata.getAsTree("javax_imageio_1.0")).getElementsByTagName("HorizontalPixelSize");
                return 1
                        / Double.parseDouble(nodes.item(0)
                                .getAttributes()
                                .getNamedItem("value")
                                .getNodeValue());
            }
        }
    }

    @Nested
    @DisplayName("as SVG, read by an XML parser")
    class AsSvg {

        @Test
        void holds_its_lines_its_words_and_what_it_shows() throws Exception {
            Document svg = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(Svg.encode(SQUARE).getBytes(StandardCharsets.UTF_8)));
            assertThat(svg.getDocumentElement().getAttribute("viewBox")).isEqualTo("0 0 20 10");
            assertThat(svg.getElementsByTagName("polygon").getLength()).isEqualTo(1);
            assertThat(svg.getElementsByTagName("polyline").getLength()).isEqualTo(1);
            assertThat(svg.getElementsByTagName("title").item(0).getTextContent())
                    .isEqualTo("A square & \"its\" <middle>");
            assertThat(svg.getElementsByTagName("text").item(0).getTextContent())
                    .isEqualTo("45\u00B0");
        }
    }

    @Test
    void the_same_drawing_gives_the_same_bytes() {
        assertThat(Png.encode(SQUARE)).isEqualTo(Png.encode(SQUARE));
        assertThat(Svg.encode(SQUARE)).isEqualTo(Svg.encode(SQUARE));
    }

    private static BufferedImage image(Drawing drawing) {
        try {
            return ImageIO.read(new ByteArrayInputStream(Png.encode(drawing)));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
