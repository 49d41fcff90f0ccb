/* The language of the user, and the way numbers are written in it. */
#pragma once

/* From here on texts are translated and the locale is the user's.  The window speaks so from the start, papers are
 * written so; lists, checks and complaints of the command line stay English, for scripts read them.
 *
 * Translations are found where they are installed, or where RIMWRIGHT_LOCALE_DIR says for an uninstalled run. */
void rw_language_speak (void);
