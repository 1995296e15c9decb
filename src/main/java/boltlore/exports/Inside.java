package boltlore.exports;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import org.jspecify.annotations.Nullable;

/** A folder of sheets, and what the program keeps in it: one hidden folder. No step follows a link. */
record Inside(Path folder) {

    static final String HIDDEN = ".boltlore";

    Path hidden() {
        return folder.resolve(HIDDEN);
    }

    /** What the program has written here. */
    Path manifest() {
        return hidden().resolve("written.json");
    }

    /** There while a run writes here, or after one that was killed. */
    Path journal() {
        return hidden().resolve("journal.json");
    }

    /** The sheets to come, while a run writes. */
    Inside fresh() {
        return new Inside(hidden().resolve("new"));
    }

    /** The sheets that have made room, while a run writes. */
    Inside old() {
        return new Inside(hidden().resolve("old"));
    }

    /** @param name with '/' between its steps */
    Path file(String name) {
        return folder.resolve(name);
    }

    static boolean there(Path path) {
        return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
    }

    static boolean isFolder(Path path) {
        return Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS);
    }

    /** Whether nothing but folders stands on the way to the file. */
    boolean leadsTo(String name) {
        for (Path in = file(name).getParent(); in != null && !in.equals(folder); in = in.getParent()) {
            if (there(in) && !isFolder(in)) {
                return false;
            }
        }
        return true;
    }

    /** Makes the folders that the file stands in, up to this one. */
    void makeRoomFor(String name) throws IOException {
        Path in = file(name).getParent();
        if (in != null && !isFolder(in)) {
            Files.createDirectories(in);
        }
    }

    /** Makes one folder where there is none. */
    static void make(Path folder) throws IOException {
        try {
            Files.createDirectory(folder);
        } catch (FileAlreadyExistsException there) {
            if (!isFolder(folder)) {
                throw new FileSystemException(folder.toString(), null, "no folder but a file or a link of that name");
            }
        }
    }

    /** Removes what is left empty of the folders that the file stood in, up to this one. */
    void tidyAfter(String name) throws IOException {
        for (Path in = file(name).getParent(); in != null && !in.equals(folder); in = in.getParent()) {
            if (!deletedIfEmpty(in)) {
                return;
            }
        }
    }

    static boolean deletedIfEmpty(Path folder) throws IOException {
        try {
            return Files.deleteIfExists(folder);
        } catch (DirectoryNotEmptyException filled) {
            return false;
        }
    }

    /** Moves a file to where none is: one that came there meanwhile is never replaced. */
    static void moveToFree(Path from, Path to) throws IOException {
        try {
            Files.createLink(to, from);
        } catch (FileAlreadyExistsException taken) {
            throw taken;
        } catch (UnsupportedOperationException | FileSystemException noLinksHere) {
            Files.move(from, to);
            return;
        }
        Files.delete(from);
    }

    /** Whether both are names of one file; a link to it is another. */
    static boolean isOneFile(Path one, Path other) throws IOException {
        return Files.isRegularFile(other, LinkOption.NOFOLLOW_LINKS) && Files.isSameFile(one, other);
    }

    static void moveOver(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Deletes a folder and all in it; what is already gone is fine. */
    static void delete(Path folder) throws IOException {
        if (!there(folder)) {
            return;
        }
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.deleteIfExists(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException failure) throws IOException {
                if (failure instanceof NoSuchFileException) {
                    return FileVisitResult.CONTINUE;
                }
                throw failure;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path each, @Nullable IOException failure) throws IOException {
                Files.deleteIfExists(each);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
