/* Marks for texts that are translated where they are shown.  The engine keeps them in English: tables
 * and findings hold the text as written here, and the one who shows it looks up the translation. */
#pragma once

#ifndef N_
#define N_(text) (text)
#endif
