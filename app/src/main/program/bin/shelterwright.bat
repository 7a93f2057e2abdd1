@echo off
rem Starts Shelterwright with the Java of JAVA_HOME, or else of PATH.
rem SHELTERWRIGHT_JAVA_OPTIONS holds further options of the Java machine, for example -Xmx4g.
setlocal
set "home=%~dp0.."

if defined JAVA_HOME (
    set "java=%JAVA_HOME%\bin\java.exe"
) else (
    set "java=java.exe"
)

set "version="
for /f "tokens=3" %%v in ('call "%java%" -version 2^>^&1 ^| findstr /i /c:" version "') do if not defined version set "version=%%~v"
if not defined version (
    echo shelterwright: no Java found. Install Java 17 or newer, or set JAVA_HOME to one. 1>&2
    exit /b 3
)
for /f "tokens=1 delims=.-+" %%m in ("%version%") do set "major=%%m"
if %major% lss 17 (
    echo shelterwright: Java %version% was found; 17 or newer is needed. Set JAVA_HOME to one. 1>&2
    exit /b 3
)

"%java%" %SHELTERWRIGHT_JAVA_OPTIONS% -cp "%home%\lib\*" org.shelterwright.app.Shelterwright %*
exit /b %errorlevel%
