package boltlore.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the name of a file or folder; one that the system's character set cannot write is refused in a sentence. */
final class PathGiven implements ITypeConverter<Path> {

    @Override
    public Path convert(String written) {
        try {
            return Path.of(written);
        } catch (InvalidPathException unwritable) {
            throw new TypeConversionException("'" + written + "' cannot name a file here: a letter of it is not in the"
                    + " character set that this terminal tells programs to use. Set LC_ALL=C.UTF-8 and run it again");
        }
    }
}
