package boltlore.distribution;

import boltlore.cli.CommandModel;
import boltlore.handbook.Handbook;
import boltlore.handbook.ManPage;
import boltlore.handbook.ZshCompletion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Lays into a finished image what people read: handbook, man pages, completion for zsh, licences of the libraries. */
public final class Furnishing {

    private Furnishing() {}

    /** Furnishes the image in the folder that the first word names. */
    public static void main(String... image) throws IOException {
        Path home = Path.of(image[0]);
        Handbook.write(home.resolve("docs"));
        ManPage.writeAll(home.resolve("man/man1"));
        Files.writeString(
                Files.createDirectories(home.resolve("completion")).resolve("_boltlore"),
                ZshCompletion.of(CommandModel.whole()));
        Licences.collect(home.resolve("lib"), home.resolve("licences"));
    }
}
