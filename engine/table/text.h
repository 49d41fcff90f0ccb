/* Marks for texts that are translated where they are shown.  The engine keeps them in English: tables
 * and findings hold the text as written here, and the one who shows it looks up the translation.  Worded
 * as glib/gi18n.h words it, so that both may be included. */
#pragma once

#ifndef N_
#define N_(String) (String)
#endif
