/** The keys that do something, bound and told from one list. */
package undercroft.view.kit.keys;
