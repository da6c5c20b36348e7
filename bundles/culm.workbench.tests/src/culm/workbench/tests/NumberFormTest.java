package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

import culm.geometry.profile.Quantity;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.numbers.NumberForm;

/** Computed numbers are rounded once, in the unit in which they are shown; what someone gave is not rounded. */
class NumberFormTest {
    @Test
    void aComputedLengthIsRoundedInItsUnit() {
        assertEquals("46.1\u2009mm", new NumberForm(Quantity.LENGTH, LengthUnit.MM, 1).computed(46.06));
        assertEquals("1813\u2009thou", new NumberForm(Quantity.LENGTH, LengthUnit.THOU, 1).computed(46.06)); // 46.06 / 0.0254 = 1813.4
        assertEquals("5.7", new NumberForm(Quantity.LENGTH, LengthUnit.THOU, 2).rounded(0.146)); // 0.146 / 0.0254 = 5.75 less a little
        assertEquals("\u22120.15", new NumberForm(Quantity.LENGTH, LengthUnit.MM, 2).rounded(-0.146));
        assertEquals("0.00", new NumberForm(Quantity.LENGTH, LengthUnit.MM, 2).rounded(-0.001));
        assertEquals("1.3", new NumberForm(Quantity.COUNT, LengthUnit.THOU, 1).computed(1.26));
    }

    @Test
    void aGivenLengthKeepsItsDigits() {
        assertEquals("46.065\u2009mm", new NumberForm(Quantity.LENGTH, LengthUnit.MM, 1).text(46.065));
    }
}
