package culm.model.xml;

import java.util.List;

/**
 * A whole XML file.
 *
 * @param before comments and instructions before the root
 * @param root the root element
 * @param after comments and instructions after it
 */
public record XmlTree(List<XmlNode> before, XmlNode root, List<XmlNode> after) {
}
