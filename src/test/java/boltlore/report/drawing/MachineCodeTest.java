package boltlore.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Codes are read back by zbar, which shares no code with the library that makes them. */
@DisplayName("A text that machines read")
class MachineCodeTest {

    @TempDir
    private Path folder;

    private String read(byte[] picture) throws IOException, InterruptedException {
        Path file = Files.write(folder.resolve("code.png"), picture);
        Process zbar = new ProcessBuilder("zbarimg", "-q", "--raw", "-Sdisable", "-Sqrcode.enable", file.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String read = new String(zbar.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        zbar.waitFor();
        return read.strip();
    }

    @ParameterizedTest
    @ValueSource(strings = {"FX-M8X20", "BL-1001/FLOOR-HIGH-VOLTAGE", "BL-1001/3/13", "PV-BX-R/A.1"})
    void is_read_by_another_program(String text) throws IOException, InterruptedException {
        assertThat(read(Png.encode(MachineCode.alone(text)))).isEqualTo(text);
    }

    /** Set dot by dot alone, by the JDK's pen on a drawing. */
    @ParameterizedTest
    @ValueSource(
            strings = {"FX-M8X20", "BL-1001/FLOOR-HIGH-VOLTAGE", "small letters, and more of them than one row holds"})
    void is_the_same_picture_alone_as_drawn(String text) {
        assertThat(Png.code(text)).isEqualTo(Png.encode(MachineCode.alone(text)));
    }

    @Test
    void is_read_on_a_drawing_with_other_marks_and_not_where_there_is_none() throws IOException, InterruptedException {
        Mark frame = Mark.outline(Outlines.box(1, 1, 79, 39));
        Mark code = new Mark.Code(new Point(50, 8), "BL-1/2/3", 20);
        assertThat(read(Png.encode(new Drawing(80, 40, "Label", List.of(frame, code)))))
                .isEqualTo("BL-1/2/3");
        assertThat(read(Png.encode(new Drawing(80, 40, "Label", List.of(frame)))))
                .isEmpty();
    }

    /** ISO/IEC 18004, table of capacities (from memory): version 1-L, of 21 squares, holds 25 characters of its own set. */
    @Test
    void stays_smallest_up_to_25_capitals_and_digits() {
        assertThat(MachineCode.squares("A".repeat(25)).side()).isEqualTo(21);
        assertThat(MachineCode.squares("A".repeat(26)).side()).isEqualTo(25);
        assertThat(MachineCode.squares("a".repeat(25)).side()).isEqualTo(25);
    }

    @Test
    void holds_something_and_not_too_much() {
        assertThatThrownBy(() -> MachineCode.squares("")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> MachineCode.squares("A".repeat(101))).isInstanceOf(IllegalArgumentException.class);
        assertThat(MachineCode.squares("A".repeat(100)).dark()).isNotEmpty();
    }

    @Test
    void is_one_path_in_svg() {
        String svg = Svg.encode(MachineCode.alone("FX-M8X20"));
        assertThat(svg).contains("<title>FX-M8X20</title>", "<path ").doesNotContain("<text");
    }
}
