package culm.workbench.internal.sharing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

import culm.blank.Blank;
import culm.blank.Profile;
import culm.blank.rules.Finding;
import culm.design.AbsentType;
import culm.model.Document;
import culm.model.Element;
import culm.model.Stray;
import culm.model.StrayAttribute;
import culm.model.xml.XmlNode;

/** What a file holds that cannot be used here, in words. */
public final class MissingNotice {
    private static final int MOST = 4;

    private MissingNotice() {
    }

    /** {@return why some of a blank's types are not here; empty when all are} */
    public static String types(Blank blank) {
        List<AbsentType> absent = absent(blank);
        if (absent.size() < 2) {
            return absent.isEmpty() ? "" : absent.get(0).reason();
        }
        return "Types that this design needs are not here: " + absent.stream().map(AbsentType::id).distinct().collect(Collectors.joining(", ")) + ". Their numbers are kept.";
    }

    /** {@return the findings of a blank without those that only say again that a type is not here} */
    public static List<Finding> without(List<Finding> findings, Blank blank) {
        Set<String> reasons = absent(blank).stream().map(AbsentType::reason).collect(Collectors.toSet());
        return reasons.isEmpty() ? findings : findings.stream().filter(f -> !reasons.contains(f.text())).toList();
    }

    private static List<AbsentType> absent(Blank blank) {
        List<Profile<?>> profiles = new ArrayList<>(List.of(blank.staple(), blank.gouge(), blank.shape()));
        blank.gougeEnd().ifPresent(profiles::add);
        return profiles.stream().filter(p -> p.type() instanceof AbsentType).map(p -> (AbsentType) p.type()).toList();
    }

    /** {@return what a file holds that this program does not know; empty when it knows everything} */
    public static String unknown(Document document) {
        Set<String> names = new LinkedHashSet<>();
        note(document, names);
        for (TreeIterator<EObject> all = EcoreUtil.getAllContents(document, false); all.hasNext();) {
            if (all.next() instanceof Element element) {
                note(element, names);
            }
        }
        if (names.isEmpty()) {
            return "";
        }
        String listed = names.stream().limit(MOST).collect(Collectors.joining(", ")) + (names.size() > MOST ? " and " + (names.size() - MOST) + " more" : "");
        return "The file holds what this Culm does not know: " + listed + ". It is kept as it is.";
    }

    private static void note(Element element, Set<String> names) {
        for (Stray stray : element.getStrays()) {
            Optional.ofNullable(stray.getNode()).filter(n -> n.kind() == XmlNode.Kind.ELEMENT).ifPresent(n -> names.add(n.name()));
        }
        for (StrayAttribute attribute : element.getStrayAttributes()) {
            names.add(attribute.getName());
        }
    }
}
