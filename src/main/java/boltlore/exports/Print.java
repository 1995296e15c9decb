package boltlore.exports;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Length and SHA-256 (FIPS 180-4) of a file's content: files of one print are the same. */
record Print(long length, String sha256) {

    private static final int BLOCK = 64 * 1024;

    static Print of(byte[] content) {
        return new Print(content.length, HexFormat.of().formatHex(digest().digest(content)));
    }

    /** @param file no link: it is not followed */
    static Print of(Path file) throws IOException {
        MessageDigest digest = digest();
        long length = 0;
        byte[] block = new byte[BLOCK];
        try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            for (int read = in.read(block); read >= 0; read = in.read(block)) {
                digest.update(block, 0, read);
                length += read;
            }
        }
        return new Print(length, HexFormat.of().formatHex(digest.digest()));
    }

    /** Whether a plain file with this content stands there; its length is looked at first. */
    boolean isOf(Path file) throws IOException {
        return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                && Files.size(file) == length
                && of(file).equals(this);
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
