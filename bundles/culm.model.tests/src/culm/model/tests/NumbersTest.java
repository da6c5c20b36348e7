package culm.model.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import culm.model.text.Numbers;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One way for numbers to become text, whatever the locale. */
class NumbersTest {
    @ParameterizedTest
    @CsvSource({"47,47", "0.1,0.1", "-0.0,0", "0.30000000000000004,0.30000000000000004", "1e-9,1e-9", "2e-3,0.002",
            "1000000,1000000", "4.9e-324,5e-324", "1.7976931348623157e308,1.7976931348623157e308", "2e23,2e23"})
    void theFewestDigitsThatAreExact(double value, String text) {
        assertEquals(text, Numbers.format(value));
    }

    @Test
    void whatIsWrittenReadsBackExactly() {
        SplittableRandom random = new SplittableRandom(4711);
        for (int i = 0; i < 20_000; i++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(-12, 9));
            String text = Numbers.format(value);
            assertEquals(value, Numbers.parse(text), text);
            assertTrue(text.length() <= 26, text);
        }
    }

    @Test
    void theLocaleChangesNothing() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals("46.05", Numbers.format(46.05));
            assertEquals("46.1", Numbers.fixed(46.05, 1));
            assertEquals(46.05, Numbers.parse("46.05"));
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @CsvSource({"46.05,1,46.1", "-0.04,1,0.0", "0.145,2,0.15", "72,0,72", "-1.25,1,-1.3"})
    void roundedAsItIsRead(double value, int decimals, String text) {
        assertEquals(text, Numbers.fixed(value, decimals));
    }

    @ParameterizedTest
    @ValueSource(strings = {"46,5", " 46.5 ", "46.5\u00a0", "+46,50"})
    void peopleMayTypeACommaOrAPoint(String typed) {
        assertEquals(46.5, Numbers.parseTyped(typed));
    }

    @Test
    void aTrueMinusSignIsUnderstood() {
        assertEquals(-0.2, Numbers.parseTyped("\u22120,2"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "NaN", "Infinity", "-inf", "1,234.5", "1.2.3", "1e308", "1e9999", "0x1p3", "5d", "4 7",
            "forty", "1,2,3", "\u0661"})
    void whatIsNoNumberIsRefused(String text) {
        assertThrows(NumberFormatException.class, () -> Numbers.parseTyped(text));
        assertThrows(NumberFormatException.class, () -> Numbers.parse(text));
    }

    @Test
    void aFileTakesNoCommaAndSaysHowToWriteIt() {
        var refusal = assertThrows(NumberFormatException.class, () -> Numbers.parse("46,5"));
        assertEquals("has a comma; in a file it is written 46.5", refusal.getMessage());
    }
}
