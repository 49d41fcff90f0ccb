/* What can go wrong with files.  Every message is one sentence in the language of the locale, without
 * a full stop or a line break. */
#pragma once

#include <glib.h>

#define RW_FILE_ERROR (rw_file_error_quark ())
GQuark rw_file_error_quark (void);

typedef enum
{
  RW_FILE_ERROR_DAMAGED, /* not JSON, or JSON that is no project */
  RW_FILE_ERROR_TOO_NEW, /* a version after RW_FILE_VERSION */
  RW_FILE_ERROR_TOO_BIG, /* over the limits of json_scan.h */
  RW_FILE_ERROR_VALUE,   /* a value that its parameter can't have */
  RW_FILE_ERROR_ACCESS,  /* can't be read or written */
  RW_FILE_ERROR_STOPPED, /* by the one who asked for it */
} RwFileError;

/* Text from outside made fit to stand in a message: on one line, cut short where it is long, valid UTF-8
 * whatever it was.  quote is for names and puts them in quotation marks, sentence for messages that quote
 * them already.  New strings. */
char *rw_file_quote    (const char *text);
char *rw_file_sentence (const char *text);
