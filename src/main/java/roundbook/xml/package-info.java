/** XML from outside, opened safely. */
package roundbook.xml;
