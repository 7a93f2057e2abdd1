@echo off
rem Starts Shelterwright with the Java of JAVA_HOME, or else of PATH.
rem SHELTERWRIGHT_JAVA_OPTIONS holds further options of the Java machine, for example -Xmx4g.
rem Exclamation marks in arguments stay as they are, and a variable named errorlevel does not hide the exit code.
setlocal EnableExtensions DisableDelayedExpansion
set "errorlevel="

rem Only in a called part is the path of the script right if its name was typed in quotes and found through PATH.
call :find_home

if defined JAVA_HOME goto java_of_home
rem PATH alone: a java.exe that lies in the current folder is not meant.
set "own_java="
for %%j in (java.exe) do set "own_java=%%~$PATH:j"
if defined own_java goto java_found
echo shelterwright: no Java found. Install Java 17 or newer, or set JAVA_HOME to one. 1>&2
exit /b 3

:java_of_home
rem Quotes that JAVA_HOME itself holds would end ours.
set "own_jdk=%JAVA_HOME:"=%"
set "own_java=%own_jdk%\bin\java.exe"
if exist "%own_java%" goto java_found
echo shelterwright: JAVA_HOME is "%own_jdk%", which holds no bin\java.exe. Set it to a Java 17 or newer. 1>&2
exit /b 3

:java_found
set "own_version="
set "own_major="
for /f "tokens=3" %%v in ('call "%own_java%" -version 2^>^&1 ^| "%SystemRoot%\System32\findstr.exe" /i /c:" version "') do if not defined own_version set "own_version=%%~v"
for /f "tokens=1 delims=.-+" %%m in ("%own_version%") do set "own_major=%%m"
if not defined own_major goto no_version
for /f "delims=0123456789" %%x in ("%own_major%") do goto no_version
if %own_major% lss 17 goto too_old

"%own_java%" %SHELTERWRIGHT_JAVA_OPTIONS% -cp "%own_home%\lib\*" org.shelterwright.app.Shelterwright %*
exit /b %errorlevel%

:no_version
echo shelterwright: "%own_java%" does not tell its version. Set JAVA_HOME to a Java 17 or newer. 1>&2
exit /b 3

:too_old
echo shelterwright: "%own_java%" is Java %own_version%; 17 or newer is needed. Set JAVA_HOME to one. 1>&2
exit /b 3

:find_home
for %%h in ("%~dp0..") do set "own_home=%%~fh"
exit /b 0
