package culm.model.files;

import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Gets a file's bytes and text, within limits and strictly UTF-8. */
public final class FileText {
    /** No file of a studio is longer: 10,000 parts take about half of it. */
    public static final int LONGEST = 24 * 1024 * 1024;

    private static final int BYTE_ORDER_MARK = 0xFEFF;
    private static final int PIECE = 8192;

    private FileText() {
    }

    /**
     * All bytes of a file.
     *
     * @param path the file
     * @param shown its name for messages
     * @return its bytes
     * @throws FileProblemException when there is no such file, or it is too long
     */
    public static byte[] bytes(Path path, String shown) throws FileProblemException {
        if (!Files.exists(path)) {
            throw problem(Kind.NO_FILE, shown, 0, "there is no such file");
        }
        if (Files.isDirectory(path)) {
            throw problem(Kind.NO_FILE, shown, 0, "this is a folder, not a file");
        }
        try (InputStream in = Files.newInputStream(path)) {
            byte[] bytes = in.readNBytes(LONGEST + 1);
            if (bytes.length > LONGEST) {
                throw problem(Kind.TOO_LARGE, shown, 0, "it is longer than " + LONGEST / (1024 * 1024) + " MiB");
            }
            return bytes;
        } catch (NoSuchFileException e) {
            throw problem(Kind.NO_FILE, shown, 0, "there is no such file");
        } catch (IOException e) {
            throw problem(Kind.NOT_ACCESSIBLE, shown, 0, "it cannot be read (" + reason(e) + ")");
        }
    }

    /**
     * The text of a file.
     *
     * @param bytes all its bytes
     * @param shown its name for messages
     * @return the text, without a byte order mark
     * @throws FileProblemException when it is empty or not UTF-8
     */
    public static String text(byte[] bytes, String shown) throws FileProblemException {
        if (bytes.length == 0) {
            throw problem(Kind.EMPTY, shown, 0, "the file is empty");
        }
        int bad = firstBadByte(bytes);
        if (bad >= 0) {
            int line = 1;
            for (int i = 0; i < bad; i++) {
                line += bytes[i] == '\n' ? 1 : 0;
            }
            throw problem(Kind.ENCODING, shown, line, "it is not text in UTF-8; save it again as UTF-8");
        }
        String text = new String(bytes, StandardCharsets.UTF_8);
        if (text.charAt(0) == BYTE_ORDER_MARK) {
            text = text.substring(1);
        }
        if (text.isBlank()) {
            throw problem(Kind.EMPTY, shown, 0, "there is nothing in the file");
        }
        return text;
    }

    /** Decodes piece by piece, so that a large file is not held a third time. */
    private static int firstBadByte(byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(PIECE);
        CoderResult result;
        do {
            out.clear();
            result = decoder.decode(in, out, true);
        } while (result.isOverflow());
        return result.isError() ? in.position() : -1;
    }

    /** An input or output error in few words, without the path, which the message names already. */
    static String reason(IOException e) {
        String reason = e instanceof java.nio.file.FileSystemException f ? f.getReason() : e.getMessage();
        return reason == null ? e.getClass().getSimpleName() : reason;
    }

    private static FileProblemException problem(Kind kind, String shown, int line, String sentence) {
        return new FileProblemException(new FileProblem(kind, shown, line, "", sentence));
    }
}
