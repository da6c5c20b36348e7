package culm.explore.internal.run;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** Writes text and numbers into a buffer in front of a stream; numbers with a point, at most six decimals, no needless zeros, the same in every country. */
public final class Digits {
    private static final int ROOM = 1 << 16;
    private static final int LONGEST = 32;
    private static final double SCALE = 1e6;
    private static final double MOST = 1e12;
    private final OutputStream out;
    private final byte[] buffer = new byte[ROOM];
    private int used;

    public Digits(OutputStream out) {
        this.out = out;
    }

    /** A number; nothing for NaN. Beyond 10^12 or infinite it is written as Java writes it. */
    public void number(double value) throws IOException {
        if (Double.isNaN(value)) {
            return;
        }
        if (!(Math.abs(value) < MOST)) {
            text(Double.toString(value));
            return;
        }
        room(LONGEST);
        long scaled = Math.round(Math.abs(value) * SCALE);
        if (value < 0 && scaled > 0) {
            buffer[used++] = '-';
        }
        whole(scaled / 1_000_000);
        int rest = (int) (scaled % 1_000_000);
        if (rest > 0) {
            buffer[used++] = '.';
            for (int unit = 100_000; rest > 0; unit /= 10) {
                buffer[used++] = (byte) ('0' + rest / unit);
                rest %= unit;
            }
        }
    }

    private void whole(long value) {
        int start = used;
        long rest = value;
        do {
            buffer[used++] = (byte) ('0' + rest % 10);
            rest /= 10;
        } while (rest > 0);
        for (int i = start, j = used - 1; i < j; i++, j--) {
            byte swap = buffer[i];
            buffer[i] = buffer[j];
            buffer[j] = swap;
        }
    }

    /** Text as UTF-8. */
    public void text(String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        if (bytes.length > ROOM) {
            flush();
            out.write(bytes);
            return;
        }
        room(bytes.length);
        System.arraycopy(bytes, 0, buffer, used, bytes.length);
        used += bytes.length;
    }

    /** One character of ASCII. */
    public void sign(char sign) throws IOException {
        room(1);
        buffer[used++] = (byte) sign;
    }

    private void room(int bytes) throws IOException {
        if (used + bytes > ROOM) {
            flush();
        }
    }

    /** Hands on what stands in the buffer. */
    public void flush() throws IOException {
        out.write(buffer, 0, used);
        used = 0;
    }
}
