package culm.bench.csv;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;

import culm.model.files.FileText;
import culm.model.problem.FileProblemException;

/** Reads a table's text: UTF-8, or else the Windows code page 1252 that older spreadsheets write. */
public final class CsvFile {
    private static final Charset OLDER = Charset.forName("windows-1252");

    private CsvFile() {
    }

    /** @param shown the file's name for messages */
    public static String read(Path file, String shown) throws FileProblemException {
        byte[] bytes = FileText.bytes(file, shown);
        try {
            return StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT).decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException notUtf8) {
            return new String(bytes, OLDER);
        }
    }

    /** Whether a file is a table, by its name. */
    public static boolean isTable(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return name.endsWith(".csv") || name.endsWith(".tsv") || name.endsWith(".txt");
    }
}
