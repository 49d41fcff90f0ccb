/* The options of the command line, and the build that they describe. */
#pragma once

#include "io/list_file.h"
#include "io/papers.h"

/* What a command takes besides --help. */
typedef enum
{
  RW_TAKES_BUILD = 1 << 0, /* a file, --set, --measured */
  RW_TAKES_FORMAT = 1 << 1,
  RW_TAKES_UNITS = 1 << 2,
  RW_TAKES_PAPERS = 1 << 3, /* --into, --paper, --only, --svg, --png ... */
  RW_TAKES_NAME = 1 << 4,   /* one word */
  RW_TAKES_SPREAD = 1 << 5, /* --builds, --seed */
  RW_TAKES_STUDY = 1 << 6,  /* a word before the file */
  RW_TAKES_REMEDIES = 1 << 7, /* --remedies */
  RW_TAKES_SHELF = 1 << 8, /* --shelf */
  RW_TAKES_PLOT = 1 << 9,  /* --format, --size */
  RW_TAKES_WHAT_IF = 1 << 10, /* two words before the file, --wanted */
  RW_TAKES_TUNING = 1 << 11,  /* a word before the file, --capo */
} RwTakes;

typedef struct
{
  gboolean help;
  char   **settings, **measured, **only, **words; /* NULL: none */
  char    *shelf, *format, *units, *paper, *into, *hand, *revision, *size, *wanted;
  gboolean svg, png;
  gboolean remedies; /* check: after each finding */
  gboolean record; /* papers: into the project that they left */
  double   dpi, margin, overlap; /* 0: not given */
  double   bar_short, bar_long; /* mm; 0: not given */
  int      builds, capo;
  gint64   seed;
} RwOptions;

#define RW_OPTIONS_ERROR (rw_options_error_quark ())
GQuark rw_options_error_quark (void);

/* Reads the words after the command; help (new) is the text for --help. */
gboolean rw_options_read  (RwOptions  *options,
                           const char *command,
                           const char *summary,
                           RwTakes     takes,
                           char      **words,
                           char      **help,
                           GError    **error);
void     rw_options_clear (RwOptions *options);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (RwOptions, rw_options_clear)

/* The file that is named, or the built-in build, with --set and --measured worked in. */
RwProject *rw_options_project (const RwOptions *options, GError **error);

/* Words of choice: the first of each where none was given, an error where it is none of them. */
gboolean rw_options_format (const RwOptions *options, gboolean csv, RwListFormat *format, GError **error);
gboolean rw_options_units  (const RwOptions *options, RwUnits *units, GError **error);
gboolean rw_options_paper  (const RwOptions *options, const RwPaper **paper, GError **error);
gboolean rw_options_hand   (const RwOptions *options, RwPapersHand *hand, GError **error);
/* Whether every --only names a sheet that there is. */
gboolean rw_options_check_only (const RwOptions *options, GError **error);
/* Whether the measures of paper, bars and pictures are ones that they can have. */
gboolean rw_options_check_measures (const RwOptions *options, GError **error);

/* Says that there is no such thing, in words like "There is no parameter %s", and what comes closest; always
 * FALSE. */
gboolean rw_options_fail_unknown (GError **error, const char *what, const char *word, const GPtrArray *names);
