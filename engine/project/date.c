#include "date.h"

#include <stdio.h>
#include <string.h>

gboolean
rw_is_date (const char *text)
{
  int year, month, day, end = 0;

  return strlen (text) == 10 && strspn (text, "0123456789-") == 10 && text[0] != '-'
         && sscanf (text, "%4d-%2d-%2d%n", &year, &month, &day, &end) == 3 && end == 10
         && g_date_valid_dmy ((GDateDay) day, (GDateMonth) month, (GDateYear) year);
}
