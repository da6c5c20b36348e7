package culm.extensions;

import org.eclipse.core.runtime.ContributorFactoryOSGi;
import org.eclipse.core.runtime.IContributor;
import org.osgi.framework.Bundle;
import org.osgi.framework.Constants;

/**
 * Who contributed something.
 *
 * @param id      the bundle's symbolic name
 * @param name    what it calls itself; its id when it does not say
 * @param version its version; empty outside OSGi
 * @param vendor  who made it; may be empty
 */
public record PlugIn(String id, String name, String version, String vendor) {
    /** The plug-in behind a contribution. */
    static PlugIn of(IContributor contributor) {
        Bundle bundle = ContributorFactoryOSGi.resolve(contributor);
        return bundle == null ? new PlugIn(contributor.getName(), contributor.getName(), "", "") : of(bundle);
    }

    /** A bundle in words. */
    public static PlugIn of(Bundle bundle) {
        return new PlugIn(bundle.getSymbolicName(), header(bundle, Constants.BUNDLE_NAME, bundle.getSymbolicName()), bundle.getVersion().toString(),
                header(bundle, Constants.BUNDLE_VENDOR, ""));
    }

    private static String header(Bundle bundle, String name, String otherwise) {
        String value = bundle.getHeaders().get(name);
        return value == null || value.isBlank() ? otherwise : value;
    }

    /** Whether it ships with Culm. */
    public boolean ships() {
        return id.equals("culm.geometry") || id.equals("culm.blank");
    }

    /** For a sentence: name and version. */
    public String said() {
        return version.isEmpty() ? name : name + " " + version;
    }
}
