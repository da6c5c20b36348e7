package culm.model.internal.files;

import culm.model.problem.FileProblem.Kind;
import culm.model.text.Numbers;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.stream.Collectors;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.ENamedElement;

/** Single values to text and back. */
final class ValueText {
    /** A text that is no such value; the message is the second half of a sentence that begins with the text. */
    static final class BadValueException extends Exception {
        private static final long serialVersionUID = 1L;
        private final Kind kind;

        BadValueException(Kind kind, String message) {
            super(message);
            this.kind = kind;
        }

        Kind kind() {
            return kind;
        }
    }

    private ValueText() {
    }

    static Object parse(EDataType type, String text, double min) throws BadValueException {
        Class<?> java = type.getInstanceClass();
        if (java == String.class) {
            return text;
        }
        String word = text.strip();
        if (java == double.class) {
            return number(word, min);
        }
        if (java == int.class) {
            return whole(word);
        }
        if (java == boolean.class) {
            return yesOrNo(word);
        }
        if (java == LocalDate.class) {
            return day(word);
        }
        return literal((EEnum) type, word);
    }

    static String format(Object value) {
        if (value instanceof Double number) {
            return Numbers.format(number);
        }
        return value instanceof Enumerator literal ? literal.getLiteral() : value.toString();
    }

    static double number(String text, double min) throws BadValueException {
        double value;
        try {
            value = Numbers.parse(text);
        } catch (NumberFormatException e) {
            throw new BadValueException(Kind.NOT_A_NUMBER, e.getMessage());
        }
        if (value < min) {
            throw new BadValueException(Kind.OUT_OF_RANGE,
                    min == 0 ? "is negative" : "is less than " + Numbers.format(min));
        }
        return value;
    }

    private static Integer whole(String text) throws BadValueException {
        try {
            return Integer.valueOf(text);
        } catch (NumberFormatException e) {
            throw new BadValueException(Kind.NOT_A_NUMBER, "is not a whole number");
        }
    }

    private static Boolean yesOrNo(String text) throws BadValueException {
        return switch (text) {
            case "true" -> Boolean.TRUE;
            case "false" -> Boolean.FALSE;
            default -> throw new BadValueException(Kind.BAD_VALUE, "is neither true nor false");
        };
    }

    private static LocalDate day(String text) throws BadValueException {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new BadValueException(Kind.BAD_VALUE, "is not a date such as 2026-03-31");
        }
    }

    private static Enumerator literal(EEnum type, String text) throws BadValueException {
        EEnumLiteral literal = type.getEEnumLiteralByLiteral(text);
        if (literal == null) {
            throw new BadValueException(Kind.BAD_VALUE, "is none of " + type.getELiterals().stream()
                    .map(ENamedElement::getName).collect(Collectors.joining(", ")));
        }
        return literal.getInstance();
    }
}
