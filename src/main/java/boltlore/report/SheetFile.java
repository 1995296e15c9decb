package boltlore.report;

import java.nio.charset.StandardCharsets;

/** A file's name and content, before it is on any disk. */
public final class SheetFile {

    private final String name;
    private final byte[] content;

    /** The content belongs to the file from here on. */
    public SheetFile(String name, byte[] content) {
        this.name = name;
        this.content = content;
    }

    public static SheetFile utf8(String name, String text) {
        return new SheetFile(name, text.getBytes(StandardCharsets.UTF_8));
    }

    /** The same file in a folder. */
    public SheetFile under(String folder) {
        return new SheetFile(folder + "/" + name, content);
    }

    public String name() {
        return name;
    }

    public byte[] content() {
        return content.clone();
    }
}
