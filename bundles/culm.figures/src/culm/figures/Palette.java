package culm.figures;

import java.util.EnumMap;
import java.util.Map;

/** What each {@link Role} looks like. Immutable. */
public final class Palette {
    /** For a light window. */
    public static final Palette LIGHT = new Palette("light", new int[] {
            0xfbfaf7, 0xffffff, 0x2b2f33, 0x5a6068, 0xd5d8db, 0xe6e7e6,
            0xcbaa46, 0x7d6518, 0xecdca6, 0x8f7d45, 0x6d6a2a, 0x3568a3, 0x234a78, 0xd2a37a, 0x7c5638, 0x255426, 0xb2560f, 0xf1efe9});
    /** For a dark window. */
    public static final Palette DARK = new Palette("dark", new int[] {
            0x1e2124, 0x2a2e32, 0xe8e9e8, 0xa9b0b7, 0x43484d, 0x33373b,
            0xb49232, 0xe3c876, 0xd9c68b, 0xf0e2b4, 0x8e8a38, 0x6fa3dc, 0x2f5c90, 0xa0734e, 0xd0a37c, 0x54d68f, 0xe8793f, 0x26292d});
    /** For paper: white ground, black ink. */
    public static final Palette PRINT = new Palette("print", new int[] {
            0xffffff, 0xffffff, 0x000000, 0x45494e, 0xb8bcc0, 0xdddfe1,
            0xcbaa46, 0x6a5410, 0xf2e6bd, 0x6f5f2e, 0x565420, 0x2f619b, 0x1d3f68, 0xc79a75, 0x6b4729, 0x264f1e, 0xb04c10, 0xffffff});

    private final String name;
    private final Map<Role, Rgb> colours = new EnumMap<>(Role.class);

    private Palette(String name, int[] hex) {
        this.name = name;
        for (Role role : Role.values()) {
            colours.put(role, Rgb.of(hex[role.ordinal()]));
        }
    }

    /** The colour of a role. */
    public Rgb of(Role role) {
        return colours.get(role);
    }

    /** A short name: light, dark, print. */
    public String name() {
        return name;
    }
}
