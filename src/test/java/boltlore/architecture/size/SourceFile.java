package boltlore.architecture.size;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.jspecify.annotations.Nullable;

/** A source file and its methods with a body, each with its count of code lines. */
record SourceFile(Path path, int codeLines, List<Method> methods) {

    record Method(String name, int codeLines) {}

    static List<SourceFile> read(List<Path> paths) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, files, null, List.of("-proc:none"), null, files.getJavaFileObjectsFromPaths(paths));
            SourcePositions positions = Trees.instance(task).getSourcePositions();
            List<SourceFile> read = new ArrayList<>();
            for (CompilationUnitTree unit : task.parse()) {
                Path path = Path.of(unit.getSourceFile().getName());
                CodeLines lines = new CodeLines(Files.readString(path));
                read.add(new SourceFile(path, lines.all(), methods(unit, positions, lines)));
            }
            return read;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Method> methods(CompilationUnitTree unit, SourcePositions positions, CodeLines lines) {
        List<Method> found = new ArrayList<>();
        LineMap lineMap = unit.getLineMap();
        new TreeScanner<@Nullable Object, @Nullable Object>() {
            @Override
            public @Nullable Object visitMethod(MethodTree method, @Nullable Object unused) {
                if (method.getBody() != null) {
                    long afterModifiers = positions.getEndPosition(unit, method.getModifiers());
                    long start = positions.getStartPosition(unit, method);
                    int first = (int) lineMap.getLineNumber(Math.max(start, afterModifiers));
                    int last = (int) lineMap.getLineNumber(positions.getEndPosition(unit, method));
                    found.add(new Method(method.getName().toString(), lines.between(first, last)));
                }
                return super.visitMethod(method, unused);
            }
        }.scan(unit, null);
        return found;
    }
}
