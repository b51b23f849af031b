@echo off
rem Runs bind-prep from an unpacked distribution.
setlocal
set "home=%~dp0.."
set "java="
if exist "%home%\runtime\bin\java.exe" set "java=%home%\runtime\bin\java.exe"
if not defined java if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if not defined java for %%j in (java.exe) do set "java=%%~$PATH:j"
if not defined java (
    echo bind-prep: no Java found: install a JDK or JRE 17 or newer, or set JAVA_HOME 1>&2
    exit /b 2
)
set "heap="
if not defined BINDPREP_JAVA_OPTS set "heap=-Xms128m -Xmn64m"
"%java%" %heap% -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto -Djava.awt.headless=true ^
    %BINDPREP_JAVA_OPTS% -jar "%home%\app\bind-prep-cli.jar" %*
exit /b %ERRORLEVEL%
