package boltlore.architecture.size;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SizeTest {

    @Nested
    @DisplayName("In the main code")
    class MainCode {

        private static final int LONGEST_FILE = 250;
        private static final int LONGEST_METHOD = 35;
        private static List<SourceFile> files = List.of();

        @BeforeAll
        static void read() throws IOException {
            try (Stream<Path> all = Files.walk(Path.of("src/main/java"))) {
                files = SourceFile.read(all.filter(path -> path.toString().endsWith(".java"))
                        .filter(path -> !path.endsWith("package-info.java"))
                        .sorted()
                        .toList());
            }
        }

        @Test
        void files_stay_small() {
            Spread spread = Spread.of(files.stream().map(SourceFile::codeLines).toList());
            System.out.println("Code lines of files, " + spread);

            assertThat(files)
                    .filteredOn(file -> file.codeLines() > LONGEST_FILE)
                    .isEmpty();
        }

        @Test
        void methods_stay_small() {
            Spread spread = Spread.of(files.stream()
                    .flatMap(file -> file.methods().stream())
                    .map(SourceFile.Method::codeLines)
                    .toList());
            System.out.println("Code lines of methods, " + spread);

            assertThat(methodsOver(LONGEST_METHOD)).isEmpty();
        }

        private static List<String> methodsOver(int limit) {
            return files.stream()
                    .flatMap(file -> file.methods().stream()
                            .filter(method -> method.codeLines() > limit)
                            .map(method -> "%n%d %s in %s".formatted(method.codeLines(), method.name(), file.path())))
                    .toList();
        }
    }

    @Nested
    @DisplayName("The count")
    class Count {

        @TempDir
        Path folder;

        @Test
        void leaves_out_blank_lines_and_comments_but_not_what_looks_like_one() {
            String source = """
                    /* a block
                     * of comment */
                    class A { // code with a remark

                        String url = "http://x /* no comment";
                        char quote = '"'; /* a remark */
                        // a remark
                    }
                    """;

            assertThat(new CodeLines(source).all()).isEqualTo(4);
        }

        @Test
        void takes_a_text_block_as_code() {
            assertThat(new CodeLines("String s = \"\"\"\n    // text\n    /* text\n    \"\"\";\n").all())
                    .isEqualTo(4);
        }

        @Test
        void takes_a_method_from_its_signature_without_annotations_to_its_closing_brace() throws IOException {
            Path file = Files.writeString(folder.resolve("A.java"), """
                    interface A {
                        int open();

                        /** Counted without this. */
                        @Deprecated
                        default int sum(
                                int a, int b) {
                            // nor this
                            return a + b;
                        }
                    }
                    """);

            assertThat(SourceFile.read(List.of(file)))
                    .containsExactly(new SourceFile(file, 8, List.of(new SourceFile.Method("sum", 4))));
        }
    }

    @Nested
    @DisplayName("The spread")
    class SpreadOfSizes {

        @Test
        void takes_sizes_that_occur() {
            assertThat(Spread.of(List.of(10, 1, 2, 3, 4, 5, 6, 7, 8, 9))).isEqualTo(new Spread(10, 5, 9, 10));
        }

        @Test
        void of_one_is_that_one() {
            assertThat(Spread.of(List.of(7))).isEqualTo(new Spread(1, 7, 7, 7));
        }
    }
}
