package culm.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

import org.junit.jupiter.api.Test;

/** The time of a version that was gone back to is kept for every zone alike and read as its reader writes times. */
class VersionTest {
    private static final DateTimeFormatter THERE = DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH).withZone(ZoneOffset.ofHours(2));

    @Test
    void aTimeInANoteIsWrittenAsItsReaderWritesIt() {
        Version first = new Version("0123456789", "Ines", Instant.parse("2026-11-30T23:44:05Z"), "Narrow shape\nmore");
        String kept = Version.backTo(first);
        assertEquals("Back to the version of 2026-11-30T23:44:05Z: Narrow shape", kept);
        Version back = new Version("123456789a", "Ines", Instant.parse("2026-12-01T08:00:00Z"), kept + "\n\ntrial 12");
        assertEquals("Back to the version of 1 Dec 2026, 01:44: Narrow shape", back.title(THERE));
        assertEquals("Back to the version of 1 Dec 2026, 01:44: Narrow shape\n\ntrial 12", back.note(THERE));
        Version again = new Version("23456789ab", "Ines", Instant.parse("2026-12-01T09:00:00Z"), Version.backTo(back));
        assertEquals("Back to the version of 1 Dec 2026, 10:00: Back to the version of 1 Dec 2026, 01:44: Narrow shape", again.title(THERE));
        assertEquals("Narrow shape", first.title(THERE));
    }
}
