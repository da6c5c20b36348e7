package culm.extensions;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.core.runtime.ContributorFactorySimple;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.spi.RegistryContributor;
import org.eclipse.core.runtime.spi.RegistryStrategy;

/** An extension registry without OSGi: classes come from the class path, as a bundle's come from the bundle. */
final class TestRegistry {
    private final Object token = new Object();
    final IExtensionRegistry registry;

    private TestRegistry() throws CoreException {
        registry = RegistryFactory.createRegistry(new FromClassPath(), token, token);
    }

    /** With Culm's own plug-ins in it, read from their plugin.xml. */
    static TestRegistry shipped() throws CoreException, IOException {
        TestRegistry made = new TestRegistry();
        for (String bundle : new String[] {"culm.extensions", "culm.blank", "culm.geometry"}) {
            made.add(bundle, Files.readString(Path.of("..", bundle, "plugin.xml")));
        }
        return made;
    }

    /** Adds one more plug-in. */
    TestRegistry add(String plugIn, String xml) {
        InputStream in = new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8));
        if (!registry.addContribution(in, ContributorFactorySimple.createContributor(plugIn), false, plugIn, null, token)) {
            throw new IllegalStateException(plugIn + ": its plugin.xml cannot be read");
        }
        return this;
    }

    Extensions read() {
        return Extensions.read(registry);
    }

    private static final class FromClassPath extends RegistryStrategy {
        FromClassPath() {
            super(null, null);
        }

        @Override
        public Object createExecutableExtension(RegistryContributor contributor, String className, String overridden) throws CoreException {
            try {
                return Class.forName(className).getDeclaredConstructor().newInstance();
            } catch (ReflectiveOperationException e) {
                throw new CoreException(new Status(IStatus.ERROR, contributor.getName(), e.toString(), e));
            }
        }
    }
}
