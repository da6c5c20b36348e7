package culm.bench.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import culm.explore.Share;

class SharesTest {
    /** Score intervals without continuity correction, R. G. Newcombe 1998, Statistics in Medicine 17, 857, table I. */
    @ParameterizedTest
    @CsvSource({"81,263,0.2553,0.3662", "15,148,0.0624,0.1605", "0,20,0.0000,0.1611", "1,29,0.0061,0.1718"})
    void wilsonAsPublished(int hits, int of, double low, double high) {
        assertEquals(low, new Share(hits, of).low(), 5e-5);
        assertEquals(high, new Share(hits, of).high(), 5e-5);
    }

    @Test
    void endsAndWords() {
        assertEquals(1, new Share(20, 20).high(), 1e-12);
        assertEquals(1 - 0.1611, new Share(20, 20).low(), 5e-5);
        assertEquals("none noted", Shares.text(new Share(0, 0)));
        assertEquals("3 of 12, 25 % (9 to 53 %)", Shares.text(new Share(3, 12)));
    }
}
