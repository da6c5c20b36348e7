/** What keeps someone else's profile type from taking the program down. */
package culm.geometry.guard;
