/** What differs between designs, or between versions of a file, in words of the trade; and versions put together. */
package culm.design.compare;
