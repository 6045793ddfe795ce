/** The one writer of pages and drawings, on the XML writer of the JDK: what comes out is well-formed and escaped. */
package undercroft.markup;
