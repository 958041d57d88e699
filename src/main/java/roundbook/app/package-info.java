/** Arguments, batches of files, safe writing, logging and the exit code. */
package roundbook.app;
