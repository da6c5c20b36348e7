package culm.testkit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

import culm.blank.Assessment;
import culm.blank.Limits;
import culm.blank.export.Exporter;
import culm.blank.rules.Finding;
import culm.blank.rules.Rules;

/** What an exporter promises: bytes for any blank, the same whatever the locale, the time zone and the day. */
public abstract class ExporterContract {
    /** The exporter, made anew. */
    protected abstract Exporter exporter();

    @Test
    @DisplayName("has an id, a name and a file ending")
    final void describesItself() {
        assertTrue(exporter().id().matches("[a-z][A-Za-z0-9]*(\\.[A-Za-z0-9]+)+"), exporter().id());
        assertFalse(exporter().name().isBlank());
        assertTrue(exporter().ending().matches("[a-z0-9]+(\\.[a-z0-9]+)*"), "an ending has no dot in front: " + exporter().ending());
    }

    @Test
    @DisplayName("writes any blank, whatever it is called, always alike")
    final void alwaysAlike() {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        for (Map.Entry<String, Assessment> each : Sample.assessments().entrySet()) {
            for (String title : List.of("", "Trial 12", "a | b <c> \"d\" & 'e'\nsecond line \u00e4\u6587")) {
                List<Finding> findings = Rules.load().judge(each.getValue(), Limits.STANDARD);
                byte[] first = assertDoesNotThrow(() -> exporter().bytes(title, each.getValue(), findings), each.getKey());
                assertNotNull(first, each.getKey());
                try {
                    Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
                    TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
                    assertArrayEquals(first, exporter().bytes(title, each.getValue(), findings), each.getKey());
                } finally {
                    Locale.setDefault(locale);
                    TimeZone.setDefault(zone);
                }
            }
        }
    }
}
