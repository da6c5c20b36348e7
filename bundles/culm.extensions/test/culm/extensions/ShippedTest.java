package culm.extensions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collection;
import java.util.List;
import java.util.function.Function;

import org.junit.jupiter.api.Test;

import culm.blank.export.Exporter;
import culm.blank.export.Exporters;
import culm.blank.rules.Rule;
import culm.blank.rules.Rules;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Profiles;

/** The two doors give the same: the extension registry in the product, ServiceLoader in plain Java. */
class ShippedTest {
    @Test
    void whatShipsComesThroughBothDoors() throws Exception {
        Extensions read = TestRegistry.shipped().read();
        Profiles plain = Profiles.load();
        assertEquals(List.of(), read.failed());
        same(plain.staples().all(), read.profiles().staples().all(), ProfileType::id);
        same(plain.gouges().all(), read.profiles().gouges().all(), ProfileType::id);
        same(plain.shapes().all(), read.profiles().shapes().all(), ProfileType::id);
        same(Rules.load().all(), read.rules().all(), Rule::id);
        same(Exporters.load().all(), read.exporters().all(), Exporter::id);
    }

    @Test
    void saysWhoContributesWhat() throws Exception {
        Contribution first = TestRegistry.shipped().read().contributions().get(0);
        assertEquals("culm.geometry", first.plugIn().id());
        assertEquals("culm.staple.oval", first.id());
        assertEquals("straight-sided oval", first.name());
        assertTrue(first.plugIn().ships());
    }

    private static <T> void same(Collection<? extends T> plain, Collection<? extends T> registry, Function<T, String> id) {
        assertTrue(!plain.isEmpty());
        assertEquals(plain.stream().map(id).toList(), registry.stream().map(id).toList());
    }
}
