/**
 * Abstract tests that a contributed type, rule or exporter has to pass: subclass the one for yours, say what is to be tested, and run it with
 * JUnit 5.
 */
package culm.testkit;
