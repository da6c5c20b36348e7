package culm.model.files;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * Tells whether two files hold the same bytes.
 *
 * @param digest SHA-256 of the content, in hex
 */
public record ContentStamp(String digest) {
    /**
     * The stamp of a content.
     *
     * @param content all bytes of a file
     * @return its stamp
     */
    public static ContentStamp of(byte[] content) {
        try {
            return new ContentStamp(HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
